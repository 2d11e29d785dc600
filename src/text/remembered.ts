/** What follows from a value that never changes is found once. */

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
