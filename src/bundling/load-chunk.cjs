/**
 * Loads a chunk of the program by its file name. Where `compiled.mjs` has left what V8 made of it, compiling is
 * saved. V8 believes such a file blindly: one wrong byte can end the process. So its digest is looked at first,
 * over the chunk's text and over the Node that it was made by; one that is stale, damaged or absent is compiled anew.
 */
const loadChunk = (() => {
  const loaded = new Map([['main.js', module]]);
  const before = '(function (exports, require, module, __filename, loadChunk) {';
  const DIGEST_BYTES = 32;

  const digestOf = (text, compiled) =>
    require('node:crypto')
      .createHash('sha256')
      .update(`${process.version} ${process.platform} ${process.arch}\n`)
      .update(text)
      .update(compiled)
      .digest();

  const compiledOf = (file, text) => {
    try {
      const kept = require('node:fs').readFileSync(`${file}.v8`);
      const compiled = kept.subarray(DIGEST_BYTES);
      return digestOf(text, compiled).equals(kept.subarray(0, DIGEST_BYTES)) ? compiled : undefined;
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

  exports.loadedChunks = loaded;
  exports.digestOf = digestOf;
  return load;
})();
