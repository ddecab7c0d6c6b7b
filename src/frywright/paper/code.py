"""QR codes (ISO/IEC 18004) of short texts, as pictures for paper and pages."""

from __future__ import annotations

import io


def code_svg(text: str) -> str:
    """A text as a QR code, an SVG with the quiet zone around it that the standard asks for."""
    import segno

    out = io.BytesIO()
    segno.make(text, error="m", micro=False).save(out, kind="svg", scale=4, border=4, xmldecl=False)
    return out.getvalue().decode()
