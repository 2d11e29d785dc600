/** Loaded before a program that is measured: writes at its end what it has used to the fourth stream. */
process.on('exit', () => {
  const { userCPUTime, systemCPUTime, maxRSS } = process.resourceUsage();
  require('node:fs').writeSync(
    3,
    JSON.stringify({ cpu: (userCPUTime + systemCPUTime) / 1e6, peak: maxRSS * 1024 }),
  );
});
