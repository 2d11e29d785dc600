/** Loaded before a program that is measured: writes at its end what it has used, its threads among it, to the fourth stream. */
process.on('exit', () => {
  const { userCPUTime, systemCPUTime, maxRSS } = process.resourceUsage();
  // A thread loads this too; the program's end counts all of them.
  if (!require('node:worker_threads').isMainThread) return;
  require('node:fs').writeSync(
    3,
    JSON.stringify({ cpu: (userCPUTime + systemCPUTime) / 1e6, peak: maxRSS * 1024 }),
  );
});
