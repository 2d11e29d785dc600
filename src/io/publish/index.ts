/** What the rest of the program asks of publishing. `intact.ts` is asked by itself, before anything else is loaded. */
export { isPublishFailure, type PublishFailure } from './failure.ts';
export {
  type Published,
  type PublishedFile,
  type PublishOptions,
  publish,
  type Step,
  type Target,
} from './publish.ts';
export { refusal } from './refusal.ts';
export { type Settled, settle } from './settle.ts';
