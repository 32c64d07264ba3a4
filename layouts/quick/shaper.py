"""The shaper's library, by way of the typesetter's own, and the kinds of memory that both ask for."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

FUNCTIONS = """
hb_blob_t * hb_blob_create (const char * data, unsigned int length, int mode, void * user_data, void * destroy);
hb_face_t * hb_face_create (hb_blob_t * blob, unsigned int index);
hb_font_t * hb_font_create (hb_face_t * face);
void hb_font_set_scale (hb_font_t * font, int x, int y);
void hb_font_set_ptem (hb_font_t * font, float ptem);
const int * hb_font_get_var_coords_normalized (hb_font_t * font, unsigned int * length);
void hb_font_set_var_coords_normalized (hb_font_t * font, const int * coords, unsigned int length);
void hb_font_get_extents_for_direction (hb_font_t * font, int direction, void * extents);
int hb_font_get_glyph_h_advance (hb_font_t * font, hb_codepoint_t glyph);
hb_bool_t hb_font_get_nominal_glyph (hb_font_t * font, hb_codepoint_t letter, unsigned int * glyph);
void * hb_buffer_create (void);
void hb_buffer_clear_contents (void * buffer);
void hb_buffer_set_cluster_level (void * buffer, int level);
void hb_buffer_add_utf8 (void * buffer, const char * text, int length, unsigned int offset, int count);
void hb_buffer_set_direction (void * buffer, int direction);
void hb_buffer_set_script (void * buffer, hb_tag_t script);
void hb_buffer_set_language (void * buffer, const void * language);
const void * hb_language_from_string (const char * said, int length);
void hb_shape (hb_font_t * font, void * buffer, const void * features, unsigned int count);
const unsigned int * hb_buffer_get_glyph_infos (void * buffer, unsigned int * length);
const int * hb_buffer_get_glyph_positions (void * buffer, unsigned int * length);
const char * pango_language_to_string (PangoLanguage * language);
"""
"""Of the shaper's library, which the typesetter does not ask for by itself."""
KINDS = (
    *('char[]', 'char[4]', 'int[12]', 'unsigned int *', 'hb_codepoint_t[]', 'hb_tag_t[100]'),
    *('FcChar8 **', 'PangoFcFontMap *', 'PangoLogAttr[]', 'PangoRectangle *'),
)
"""Of memory that the typesetter asks for: each is read as C the first time."""


def library() -> Any:
    """Return the shaper's library, which knows what is asked of it here."""
    from weasyprint.text.ffi import ffi, harfbuzz

    if not hasattr(harfbuzz, 'hb_buffer_create'):
        ffi.cdef(FUNCTIONS)
    return harfbuzz


def glyphs_of(font: Any, letters: str) -> Iterator[int]:
    """Return the numbers of a font's glyphs for some letters, as far as it has them."""
    from weasyprint.text.ffi import ffi

    shaper, number = library(), ffi.new('unsigned int *')
    for letter in letters:
        if shaper.hb_font_get_nominal_glyph(font, ord(letter), number):
            yield number[0]


def name_kinds() -> None:
    """Name kinds of memory before they are asked for."""
    from weasyprint.text.ffi import ffi

    library()
    for kind in KINDS:
        ffi.typeof(kind)
