/** What the exit status says, in one table. 70 and 74 are EX_SOFTWARE and EX_IOERR of BSD's sysexits(3); 130 is what shells give for Ctrl-C. */
export const EXIT = { done: 0, mustFix: 1, usage: 2, bug: 70, disk: 74, stopped: 130 } as const;
