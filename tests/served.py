#!/usr/bin/env python3
"""Holds what the program serves against the folder it builds: the same bytes, the right types, every header.

usage: served.py ADDRESS FOLDER
"""

import sys
import urllib.error
import urllib.request
from pathlib import Path

TYPES = {".html": "text/html", ".js": "text/javascript", ".css": "text/css", ".wasm": "application/wasm"}
HEADERS = {
    "Content-Security-Policy": "default-src 'none'; script-src 'self' 'wasm-unsafe-eval';",
    "X-Content-Type-Options": "nosniff",
    "Referrer-Policy": "no-referrer",
    "Cross-Origin-Opener-Policy": "same-origin",
    "Cache-Control": "no-cache",
}


def wrong(address: str, folder: Path) -> list[str]:
    found = []
    files = [path for path in sorted(folder.rglob("*")) if path.is_file()]
    for path in files:
        name = path.relative_to(folder).as_posix()
        with urllib.request.urlopen(address + name) as answer:
            if answer.read() != path.read_bytes():
                found.append(f"{name}: other bytes are served than were built")
            expected = TYPES.get(path.suffix, "")
            if not answer.headers["Content-Type"].startswith(expected):
                found.append(f"{name}: served as {answer.headers['Content-Type']}")
            for header, value in HEADERS.items():
                if not (answer.headers[header] or "").startswith(value):
                    found.append(f"{name}: {header} is {answer.headers[header]}")
    names = {path.name for path in files}
    missing = {"index.html", "style.css", "start.js", "tankwright.js", "tankwright_bg.wasm"} - names
    found += [f"{name} was not built" for name in sorted(missing)]
    for outside in ["%2e%2e/Cargo.toml", "..%2fCargo.toml", "nothing.js"]:
        try:
            urllib.request.urlopen(address + outside)
            found.append(f"{outside} is served")
        except urllib.error.HTTPError as error:
            if error.code != 404:
                found.append(f"{outside}: {error}")
    print(f"{len(files)} files built; served the same at {address}")
    return found


def main() -> int:
    address, folder = sys.argv[1:]
    if not address:
        print("the program did not say where it serves")
        return 1
    found = wrong(address, Path(folder))
    print("\n".join(found))
    return 1 if found else 0


if __name__ == "__main__":
    sys.exit(main())
