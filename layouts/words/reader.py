"""The words of what cannot be read: lengths, pitches, angles, ranges, sizes of stock, files."""

from __future__ import annotations

from layouts.words.say import N_

MESSAGES = {
    'reader.a_length': N_('a length such as 4 ft, 4\' 7 1/2", 55.5 in, 55 1/2 (inches), 1.4 m or 1400 mm'),
    'reader.no_length': N_('{written} is no length'),
    'reader.below_zero': N_("'{written}' is below zero"),
    'reader.too_long': N_("'{written}' is over {most:,} {unit}"),
    'reader.a_pitch': N_(
        'a pitch such as 6, 6/12, 6 in {base}, 6:12, 7.5, 7 1/2 or 26.565 deg, above 0 and up to {most}'
    ),
    'reader.no_pitch': N_('{written} is no pitch'),
    'reader.flat': N_("'{written}' is flat: a rafter needs a rise"),
    'reader.steep': N_("'{written}' is over {most}"),
    'reader.say_steep': N_(
        'if it is meant, say so: steep = true in the settings, --steep on the command line'
    ),
    'reader.too_steep': N_("'{written}' is steeper than any rafter"),
    'reader.two_ways': N_("'{written}' can be read in more than one way"),
    'reader.say_which': N_("write '{rise}' for so many inches per foot, or the rise and run as 6:12"),
    'reader.no_slope': N_("'{written}' is no slope"),
    'reader.slope_degrees': N_('above 0 and below 90 degrees'),
    'reader.a_range': N_("a range such as '4 to 12 by 1/2'"),
    'reader.range_needs': N_('a range needs inches of rise and a step above 0'),
    'reader.range_backwards': N_('the range goes backwards, {first} to {last}'),
    'reader.no_pitch_given': N_('no pitch is given'),
    'reader.pitch_list': N_("a list such as [4, 6, '7 1/2'] or '1 to 24'"),
    'reader.too_many_pitches': N_('{count} pitches are too many'),
    'reader.no_angle': N_("'{written}' is no such angle"),
    'reader.degrees_below': N_('degrees above 0 and below {below}'),
    'reader.no_stock': N_("'{written}' is no size of rafter stock"),
    'reader.no_toml': N_('cannot be read as TOML: {fault}'),
    'reader.nested_too_deep': N_('brackets nested too deep'),
    'reader.no_measure': N_('{written} is no number that measures anything'),
    'reader.too_many_digits': N_('a whole number of over {most} digits measures nothing'),
    'reader.mend': N_('mend that'),
    'reader.mend_place': N_('mend that place'),
}
