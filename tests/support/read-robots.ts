/** robots.txt as an independent reader (robots-parser) takes it. */
import robotsParser from 'robots-parser';

interface Robots {
  readonly isAllowed: (address: string, robot?: string) => boolean | undefined;
  readonly getSitemaps: () => string[];
}

/** The package declares a default export and is a plain CommonJS function. */
export const readRobots = robotsParser as unknown as (address: string, text: string) => Robots;
