/** The proof as a page of the back room. */
export { proof } from './plan.ts';
