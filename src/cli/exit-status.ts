/** What the exit status says, in one table: help and code read it here. */
export const EXIT = { done: 0, mustFix: 1, usage: 2, bug: 70, disk: 74 } as const;

/** 70 and 74 are EX_SOFTWARE and EX_IOERR of BSD's sysexits(3). */
export const exitMeanings: readonly (readonly [number, string])[] = [
  [EXIT.done, 'done'],
  [EXIT.mustFix, 'something in the content must be fixed, or a proof misses its aim; nothing was written'],
  [
    EXIT.usage,
    'the command line cannot be carried out, or something that was not made here is in the way; nothing was written',
  ],
  [EXIT.bug, 'a bug in lidlore'],
  [
    EXIT.disk,
    'the disk refused to be read or written; the old site is as it was, or the next build finishes the new one',
  ],
];
