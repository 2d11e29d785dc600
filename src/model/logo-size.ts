/**
 * Pixels that each side of a logo needs to be taken up: what search engines ask of an organization's logo (their
 * published guidance, from memory).
 */
export const LEAST_LOGO = 112;
