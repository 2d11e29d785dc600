/** What the index has of a document, and what a place counts for: the same where it is made and where it is asked. */

/** Fields of the first part: what a thing is called, and what else its record says. */
export const HEAD_FIELDS = ['name', 'about'] as const;
/** The one field of the parts that come after: all of the first part's words and the story's. */
export const TEXT_FIELDS = ['text'] as const;

/**
 * A document is scored as one text, as BM25 by the book has it; what stands in its name or its record counts once
 * more, by this share. A field scored for itself would count more than it says: a word is rare in names.
 */
export const HEAD_SHARE = 0.5;
