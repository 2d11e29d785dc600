/**
 * Runs in a thread of its own: encodes the frames of one piece as they come, and gives the piece back as a file. It is no
 * part of the bundle, because a thread is started from a file.
 */
const { parentPort, workerData } = require('node:worker_threads');
const { createH264MP4Encoder } = require(workerData.encoder);

let encoder;

const begin = async ({ width, height, rate, quality, frames }) => {
  encoder = await createH264MP4Encoder();
  encoder.width = width;
  encoder.height = height;
  encoder.frameRate = rate;
  encoder.speed = workerData.speed;
  encoder.quantizationParameter = quality;
  // One picture that stands for itself, at the cut, and no other.
  encoder.groupOfPictures = frames + 1;
  encoder.initialize();
};

const end = () => {
  encoder.finalize();
  const file = encoder.FS.readFile(encoder.outputFilename).slice();
  encoder.FS.unlink(encoder.outputFilename);
  encoder.delete();
  encoder = undefined;
  return file;
};

parentPort.on('message', async (message) => {
  if (message.begin) {
    await begin(message.begin);
    parentPort.postMessage({ ready: true });
  } else if (message.frame) {
    encoder.addFrameYuv(message.frame);
    parentPort.postMessage({ frame: message.frame }, [message.frame.buffer]);
  } else {
    const file = end();
    parentPort.postMessage({ file }, [file.buffer]);
  }
});
