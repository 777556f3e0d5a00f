"""The Python of the read-me, the guide and the book, run as it stands.

A line `print(...)  # text` must print that text.
"""

import builtins
import re
import sys
from pathlib import Path

import pytest

TOP = Path(__file__).resolve().parents[2]
PAGES = [TOP / "README.md", TOP / "DEVELOPERS.md", *sorted((TOP / "book" / "src").rglob("*.md"))]
FENCE = re.compile(r"^```python\n(.*?)^```$", re.MULTILINE | re.DOTALL)
SAYS = re.compile(r"^\s*print\(.*\)  # (.*)$")


def blocks():
    for page in PAGES:
        text = page.read_text("utf-8")
        for found in FENCE.finditer(text):
            line = text.count("\n", 0, found.start(1)) + 1
            yield pytest.param(found.group(1), id=f"{page.relative_to(TOP).as_posix()}:{line}")


@pytest.mark.parametrize("code", list(blocks()))
def test_block(code, monkeypatch):
    printed = []

    def record(*values, sep=" ", **_):
        printed.append((sys._getframe(1).f_lineno, sep.join(map(str, values))))

    monkeypatch.setattr(builtins, "print", record)
    exec(compile(code, "page", "exec"), {"__name__": "page"})
    lines = code.splitlines()
    said = {number: text for number, text in printed}
    for number, line in enumerate(lines, 1):
        if expected := SAYS.match(line):
            assert said.get(number) == expected.group(1)


def test_pages_have_python():
    assert len(list(blocks())) >= 10
