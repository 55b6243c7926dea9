"""Paper: reports and covers as HTML and PDF. The only importer of typst."""
