/** A page as the desk gives it now; undefined where it gives none. */
export const pageAt = async (address: string): Promise<Document | undefined> => {
  const answer = await fetch(address, { headers: { accept: 'text/html' } });
  return answer.ok ? new DOMParser().parseFromString(await answer.text(), 'text/html') : undefined;
};

/** This very page as it is now. */
export const pageNow = (): Promise<Document | undefined> => pageAt(location.href);
