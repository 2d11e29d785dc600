/** This page as the desk gives it now; undefined where it gives none. */
export const pageNow = async (): Promise<Document | undefined> => {
  const answer = await fetch(location.href, { headers: { accept: 'text/html' } });
  return answer.ok ? new DOMParser().parseFromString(await answer.text(), 'text/html') : undefined;
};
