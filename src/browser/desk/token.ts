/** What the forms of a page prove themselves with: a desk that was closed and opened again asks for another. */
import { pageNow } from './page-now.ts';

/** Gives the forms of this page the token of a newer one; true where it was another. */
export const takeToken = (page: Document): boolean => {
  const { token } = page.body.dataset;
  if (token === undefined || token === document.body.dataset.token) return false;
  document.body.dataset.token = token;
  for (const field of document.querySelectorAll<HTMLInputElement>('input[name=token]')) field.value = token;
  return true;
};

/** Asks for this page again and takes its token; true where it was another. */
export const renewToken = async (): Promise<boolean> => {
  const page = await pageNow();
  return page !== undefined && takeToken(page);
};
