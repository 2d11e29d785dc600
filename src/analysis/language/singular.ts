/** English singulars. */
import pluralize from 'pluralize';

/** The singular of a folded English word; a word that is singular already is given back. */
export const singularOf = (folded: string): string => pluralize.singular(folded);
