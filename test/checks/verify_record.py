#!/usr/bin/env python3
"""Verifies a saved record of Evenfield without Evenfield: python3 verify_record.py RECORD.jsonl

Needs nothing but Python 3.8 and what comes with it. Prints one line and ends with 0 if the record is as it was written,
with 1 if it is not. The format is described in DEVELOPERS.md, "The record as a file".
"""
import hashlib
import json
import sys


def canonical(value):
    """RFC 8785: no white space, members sorted by UTF-16 code units, numbers as ECMAScript writes them."""
    if value is None or isinstance(value, bool):
        return json.dumps(value)
    if isinstance(value, str):
        return json.dumps(value, ensure_ascii=False)
    if isinstance(value, (int, float)):
        return number(value)
    if isinstance(value, list):
        return "[" + ",".join(map(canonical, value)) + "]"
    members = sorted(value.items(), key=lambda member: member[0].encode("utf-16-be", "surrogatepass"))
    return "{" + ",".join(canonical(name) + ":" + canonical(held) for name, held in members) + "}"


def number(value):
    """Both languages write the shortest digits that read back as the same double; they differ in where the point goes."""
    double = float(value)
    if double == 0:
        return "0"
    sign = "-" if double < 0 else ""
    digits, exponent = repr(abs(double)), 0
    if "e" in digits:
        digits, power = digits.split("e")
        exponent = int(power)
    whole, _, part = digits.partition(".")
    point = len(whole) + exponent
    digits = (whole + part).lstrip("0")
    point -= len(whole + part) - len(digits)
    digits = digits.rstrip("0")
    if 0 < point <= 21:
        text = digits.ljust(point, "0")
        return sign + (text if len(text) == point else text[:point] + "." + text[point:])
    if -6 < point <= 0:
        return sign + "0." + "0" * -point + digits
    power = point - 1
    head = digits[0] + ("." + digits[1:] if len(digits) > 1 else "")
    return sign + head + "e" + ("+" if power > 0 else "-") + str(abs(power))


def fault(text):
    """What does not hold, at the first place where it does not; None if all of it does."""
    lines = text.split("\n")
    if lines.pop() != "":
        return "The last line is not ended by a line feed."
    if not lines:
        return "The file is empty."
    read = []
    for count, line in enumerate(lines, 1):
        try:
            read.append(json.loads(line))
        except ValueError as problem:
            return f"Line {count} is not JSON: {problem}"
        if not isinstance(read[-1], dict):
            return f"Line {count} is no JSON object."
    head, entries = read[0], read[1:]
    if (head.get("format"), head.get("version")) != ("evenfield-record", 1):
        return "The first line is not that of a record of version 1."
    previous, left = "0" * 64, {}
    for seq, entry in enumerate(entries, 1):
        stated = entry.pop("hash", None)
        if entry.get("seq") != seq:
            return f"Entry {seq} is missing."
        if entry.get("project") != head.get("project"):
            return f"Entry {seq} is of another project."
        if entry.get("previousHash") != previous:
            return f"Entry {seq} does not follow on the entry before it."
        if hashlib.sha256(canonical(entry).encode("utf-8", "surrogatepass")).hexdigest() != stated:
            return f"Entry {seq} is not as it was written."
        what = (entry.get("kind"), entry.get("id"))
        if canonical(entry.get("before")) != canonical(left.get(what)):
            return f"Entry {seq} starts from something else than the entries before it left."
        previous, left[what] = stated, entry.get("after")
    if head.get("entries") != len(entries):
        return "The first line tells of another number of entries: some were cut off or added."
    if not entries or head.get("head") != previous:
        return "The first line names another last hash."
    return None


if __name__ == "__main__":
    if len(sys.argv) != 2:
        sys.exit("usage: python3 verify_record.py RECORD.jsonl")
    try:
        with open(sys.argv[1], encoding="utf-8-sig", newline="") as file:
            content = file.read()
    except (OSError, UnicodeDecodeError) as problem:
        sys.exit(f"broken: the file can't be read: {problem}")
    problem = fault(content)
    if problem:
        sys.exit(f"broken: {problem}")
    first = json.loads(content.split("\n", 1)[0])
    print(f"intact: {first['entries']} entries, head {first['head']}")
