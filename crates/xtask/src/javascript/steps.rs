use super::{
    chromium,
    node::{self, tool},
    package::{self, PUBLISHED, Package, WITH_FAULT},
};
use crate::{
    chain::{Chain, Prepared},
    command::{done, emptied, marks, program},
    report::Report,
};

/// Everything.
pub(crate) fn all(report: &mut Report) {
    let mut chain = built(report);
    tests(&mut chain);
    chain.work("tarball in a new project", package::project);
    chain.check("tsc --strict: examples stand, slips are refused", || {
        Ok(tool("tsc", "--project tsconfig.json"))
    });
    chain.need_work("Chromium", chromium::make_sure);
    chain.tests("page in Chromium", || {
        let mut test = node::tests("tests/browser")?;
        test.env("CHROMIUM", chromium::path().unwrap_or_default());
        Ok(test)
    });
    chain.figure("slips refused", marks("tests/node/types/slips.ts", "@ts-expect-error"));
    for file in ["sugaring.wasm", "glue.js", "inline.js"] {
        chain.figure(file, PUBLISHED.sizes(file));
    }
}

/// The package and its tests in Node.
pub(crate) fn inner_loop(report: &mut Report) {
    tests(&mut built(report));
}

fn built(report: &mut Report) -> Chain<'_> {
    let mut chain = Chain::new(report, "javascript");
    chain.need_work("Node", node::find);
    chain.need_work("tools", node::install);
    package(&mut chain, "package with a fault", WITH_FAULT);
    package(&mut chain, "package", PUBLISHED);
    chain.need("tarball", || Ok(PUBLISHED.pack()));
    chain.need_work("tarball where the tests find it", unpack);
    chain
}

fn package(chain: &mut Chain<'_>, name: &str, package: Package) {
    chain.need(&format!("{name}: module"), || package.module());
    chain.need(&format!("{name}: glue"), || package.glue());
    if package.is_published() {
        chain.need(&format!("{name}: wasm-opt"), || Ok(package.shrink()));
    }
    chain.need_work(&format!("{name}: put together"), || package.assemble());
}

/// Where `import "sugaring"` of the tests looks; the lock file of their tools knows nothing of it.
fn unpack() -> Prepared<()> {
    let folder = node::folder().join("node_modules/sugaring");
    emptied(&folder)?;
    done(
        program("tar", "--extract --gzip --strip-components=1 --file")
            .arg(PUBLISHED.tarball())
            .arg("--directory")
            .arg(folder),
    )
}

fn tests(chain: &mut Chain<'_>) {
    chain.tests("tests in Node", || {
        let mut test = node::tests("tests/node")?;
        test.env("SUGARING_WITH_FAULT", WITH_FAULT.folder());
        Ok(test)
    });
}
