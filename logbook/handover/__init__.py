"""The closeout package: what goes in, how it is written, and how anybody proves that it is whole.

    bag.py        a BagIt 1.0 bag (RFC 8493) written into a ZIP as a stream
    register.py   the as-built register as rows, CSV and Table Schema; workbook.py the same as XLSX
    coverage.py   what the schedule asks for and nobody logged
    findings.py   flagged findings, open ones first
    stripping.py  photos without camera data
    signing.py    Ed25519 over the tag manifest
    verify.py     every problem of a package, from the package alone; archive.py reads its ZIP with suspicion
"""
