"""Says at the end how much was judged to the last bit."""

import sys


def pytest_terminal_summary(terminalreporter):
    judged = getattr(sys.modules.get("test_conformance"), "JUDGED", None)
    if judged:
        text = "conformance: {vectors} vectors and {lanes} lanes of {functions} functions, {edges} edges and {columns} as columns"
        terminalreporter.write_line(text.format_map(judged))
    independent = sys.modules.get("test_independent")
    if independent:
        for line in independent.summary():
            terminalreporter.write_line(line)
