/** What follows from values that never change is found once. */

/**
 * The same function, which works out its answer once for each object and keeps it for as long as the object is in use.
 * Right only for functions of nothing but the object, and for objects that are never changed.
 */
export const remembered = <Of extends object, Answer>(find: (of: Of) => Answer): ((of: Of) => Answer) => {
  const known = new WeakMap<Of, { readonly answer: Answer }>();
  return (of) => {
    const before = known.get(of);
    if (before) return before.answer;
    const answer = find(of);
    known.set(of, { answer });
    return answer;
  };
};

/**
 * The same of two objects, as of a document's data and what it is made with. What it gave is let go with the first. What
 * shows is only the time it takes.
 */
export const rememberedFor = <Of extends object, With extends object, Answer>(
  find: (of: Of, given: With) => Answer,
): ((of: Of, given: With) => Answer) => {
  const byOf = remembered((of: Of) => remembered((given: With) => find(of, given)));
  return (of, given) => byOf(of)(given);
};
