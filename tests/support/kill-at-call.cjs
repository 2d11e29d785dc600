/**
 * Loaded before a program: kills it (SIGKILL) right before the call to the disk of which LIDLORE_KILL_AT is the number, among
 * those that change anything, or before the first of a path that ends with LIDLORE_KILL_BEFORE. With LIDLORE_COUNT_CALLS,
 * a file, writes there how many there were.
 */
const fs = require('node:fs');

const { writeFileSync } = fs;
const at = Number(process.env.LIDLORE_KILL_AT ?? 0);
const before = process.env.LIDLORE_KILL_BEFORE;
let calls = 0;

const watch = (functions, names) => {
  for (const name of names) {
    const call = functions[name];
    functions[name] = (...words) => {
      calls += 1;
      if (calls === at || (before && String(words[0]).endsWith(before))) process.kill(process.pid, 'SIGKILL');
      return call(...words);
    };
  }
};
const AWAITED = ['mkdir', 'open', 'rename', 'rmdir', 'unlink', 'utimes', 'writeFile', 'copyFile', 'rm'];
watch(fs, [
  ...['mkdirSync', 'writeSync', 'writeFileSync', 'copyFileSync', 'linkSync', 'renameSync', 'rmSync'],
  'unlinkSync',
]);
watch(fs.promises, AWAITED);

const count = process.env.LIDLORE_COUNT_CALLS;
if (count) process.on('exit', () => writeFileSync(count, String(calls)));
