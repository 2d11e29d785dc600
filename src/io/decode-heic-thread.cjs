/**
 * Runs in a thread of its own, because libheif compiled to WebAssembly hears of no clock while it works: whoever started
 * the thread ends it. It is no part of the bundle, because a thread is started from a file.
 */
const { parentPort, workerData } = require('node:worker_threads');
const { all } = require(workerData.decoder);

const decode = async ({ bytes, mostPixels }) => {
  const [first] = await all({ buffer: bytes });
  if (!first) return undefined;
  const { width, height } = first;
  if (width * height > mostPixels) return { width, height };
  const { data } = await first.decode();
  return { width, height, data };
};

const said = (error) => (error instanceof Error ? error.message : String(error));

decode(workerData).then(
  (pixels) => parentPort.postMessage({ pixels }, pixels?.data ? [pixels.data.buffer] : []),
  (error) => parentPort.postMessage({ problem: said(error) }),
);
