"""Documents to PDF, charts to SVG."""
