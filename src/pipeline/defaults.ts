/** What holds where nobody says otherwise. Loads nothing else, so that help can name it. */
export { DEFAULT_AIM } from '../analysis/coverage/aim.ts';
export { DEFAULT_SHARE } from '../analysis/parcels/default-share.ts';
