"""What to say when the compiled part of the package cannot be loaded."""

from __future__ import annotations

import platform
import sys
import sysconfig
from pathlib import Path


def explained(error: ImportError) -> ImportError:
    """The same error, with what is there, what is needed, and what to do."""
    here = Path(__file__).parent
    found = sorted(path.name for path in here.glob("_sugaring*") if path.suffix in {".so", ".pyd", ".dylib"})
    tags = sorted(
        line.removeprefix("Tag: ")
        for file in here.parent.glob("sugaring-*.dist-info/WHEEL")
        for line in file.read_text("utf-8").splitlines()
        if line.startswith("Tag: ")
    )
    lines = [
        f"the compiled part of sugaring cannot be loaded: {error}",
        f"  this Python: {platform.python_implementation()} {platform.python_version()}, {sysconfig.get_platform()}",
        f"  files found: {', '.join(found) or 'none'}",
        f"  wheel made for: {', '.join(tags) or 'unknown, no wheel was installed here'}",
        "A wheel fits one platform and CPython 3.11 or later; it is not for sub-interpreters.",
        f"Install it anew with this Python: {sys.executable} -m pip install --force-reinstall --no-cache-dir sugaring",
    ]
    return ImportError("\n".join(lines), name=error.name, path=error.path)
