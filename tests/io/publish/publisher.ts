/** A process of its own that publishes: `node publisher.mjs DIR SITE COUNT`. Its files are made of the site's name. */
import { argv, exit, stdout } from 'node:process';
import { publish } from '../../../src/io/publish/publish.ts';
import { manyFiles } from './many-files.ts';

const [, , dir = '', site = '', count = ''] = argv;
try {
  await publish([{ dir, files: manyFiles(site, Number(count)) }], { onWait: () => stdout.write('waits\n') });
} catch (error) {
  stdout.write(`${error}\n`);
  exit(1);
}
