/** Signs that stand where a file was read in another encoding than it was saved in, or is no text at all. */
export const UNREADABLE = /[\0\x80-\x84\x86-\x9f\ufffd]/;
