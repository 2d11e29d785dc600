/**
 * Loaded before a program: kills it (SIGKILL) right before the call to the disk of which LIDLORE_KILL_AT is the number, among
 * those that change anything. With LIDLORE_COUNT_CALLS, a file, writes there how many there were.
 */
const fs = require('node:fs');

const at = Number(process.env.LIDLORE_KILL_AT ?? 0);
const CHANGING = ['mkdirSync', 'writeSync', 'copyFileSync', 'linkSync', 'renameSync', 'rmSync', 'unlinkSync'];
let calls = 0;
for (const name of CHANGING) {
  const call = fs[name];
  fs[name] = (...words) => {
    calls += 1;
    if (calls === at) process.kill(process.pid, 'SIGKILL');
    return call(...words);
  };
}
const count = process.env.LIDLORE_COUNT_CALLS;
if (count) process.on('exit', () => fs.writeFileSync(count, String(calls)));
