"""What libical 3 finds wrong in calendars: a JSON list of texts on stdin, a list of lists of errors on stdout."""
import ctypes
import json
import sys

ical = ctypes.CDLL("libical.so.3")
for name in ("icalparser_parse_string", "icalcomponent_as_ical_string"):
    getattr(ical, name).restype = ctypes.c_void_p
ical.icalparser_parse_string.argtypes = [ctypes.c_char_p]
ical.icalcomponent_as_ical_string.argtypes = [ctypes.c_void_p]
ical.icalrestriction_check.argtypes = [ctypes.c_void_p]
ical.icalcomponent_count_errors.argtypes = [ctypes.c_void_p]


def errors(text):
    component = ical.icalparser_parse_string(text.encode())
    if not component:
        return ["not a calendar"]
    allowed = ical.icalrestriction_check(component)
    found = ical.icalcomponent_count_errors(component)
    shown = ctypes.string_at(ical.icalcomponent_as_ical_string(component)).decode()
    lines = shown.replace("\r\n ", "").split("\r\n")
    said = [line for line in lines if line.startswith("X-LIC-ERROR")]
    return said + ([] if allowed else ["restriction"]) + ([] if found == len(said) else [f"{found} errors"])


json.dump([errors(text) for text in json.load(sys.stdin)], sys.stdout)
