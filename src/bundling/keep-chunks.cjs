/** Loaded before the program by keep-compiled.mjs: when the program ends, keeps what V8 made of its chunks. */
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
});
