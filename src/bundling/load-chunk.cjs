/**
 * Loads a chunk of the program by its file name. Where `keep-compiled.mjs` has left what V8 made of it, compiling is
 * saved. V8 believes such a file blindly: one wrong byte can end the process. So its checksum is looked at first,
 * over the chunk's text and over the Node that it was made by; one that is stale, damaged or absent is compiled anew.
 * CRC-32, because what makes a digest takes longer to load than all the chunks of a build that has nothing to do.
 */
const loadChunk = (() => {
  const loaded = new Map([['main.js', module]]);
  const before = '(function (exports, require, module, __filename, loadChunk) {';
  const SUM_BYTES = 4;

  const sumOf = (text, compiled) => {
    const { crc32 } = require('node:zlib');
    const sum = Buffer.alloc(SUM_BYTES);
    const ofNode = crc32(`${process.version} ${process.platform} ${process.arch} ${text.length}\n`);
    sum.writeUInt32BE(crc32(compiled, crc32(text, ofNode)));
    return sum;
  };

  const compiledOf = (file, text) => {
    try {
      const kept = require('node:fs').readFileSync(`${file}.v8`);
      const compiled = kept.subarray(SUM_BYTES);
      return sumOf(text, compiled).equals(kept.subarray(0, SUM_BYTES)) ? compiled : undefined;
    } catch {
      return undefined;
    }
  };

  const load = (name) => {
    const known = loaded.get(name);
    if (known) return known.exports;
    const file = require('node:path').join(__dirname, name);
    const text = require('node:fs').readFileSync(file);
    const script = new (require('node:vm').Script)(`${before}${text}\n})`, {
      filename: file,
      columnOffset: -before.length,
      cachedData: compiledOf(file, text),
    });
    const chunk = { exports: {}, file, text, script };
    loaded.set(name, chunk);
    script.runInThisContext()(chunk.exports, require, chunk, file, load);
    return chunk.exports;
  };

  /** What stands in main.js and is a chunk by its name. */
  load.take = (name, define) => {
    const chunk = { exports: {} };
    define(chunk.exports, require);
    loaded.set(name, chunk);
  };

  exports.loadedChunks = loaded;
  exports.sumOf = sumOf;
  return load;
})();
