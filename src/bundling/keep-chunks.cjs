/** Loaded before the program, and before each of its threads, by keep-compiled.mjs: at its end, keeps what V8 made of its chunks. */
const { renameSync, writeFileSync } = require('node:fs');
const { setFlagsFromString } = require('node:v8');

// V8 forgets what has not run for a while. The flag is set back below: V8 takes only what was made under its own flags.
setFlagsFromString('--no-flush-bytecode');

process.on('exit', () => {
  setFlagsFromString('--flush-bytecode');
  const { loadedChunks, sumOf } = require.cache[process.argv[1]].exports;
  for (const { file, text, script } of loadedChunks.values()) {
    if (!script) continue;
    const compiled = script.createCachedData();
    writeFileSync(`${file}.new`, Buffer.concat([sumOf(text, compiled), compiled]));
    renameSync(`${file}.new`, `${file}.v8`);
  }
  // A thread ends before the program does, and flags are the whole process's.
  setFlagsFromString('--no-flush-bytecode');
});
