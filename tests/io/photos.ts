import sharp, { type Sharp } from 'sharp';

/** A photo that is red on the left and blue on the right, with some grain so that it takes some bytes. */
const halves = (width: number, height: number): Sharp => {
  const data = Buffer.alloc(width * height * 3);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const at = (y * width + x) * 3;
      const grain = (x * 7 + y * 13) % 24;
      data[at] = x < width / 2 ? 200 + grain : 10;
      data[at + 1] = 10 + grain;
      data[at + 2] = x < width / 2 ? 10 : 200 + grain;
    }
  }
  return sharp(data, { raw: { width, height, channels: 3 } });
};

export const photo = (
  width = 600,
  height = 400,
  format: 'jpeg' | 'png' | 'webp' | 'avif' = 'jpeg',
): Promise<Buffer> => halves(width, height).toFormat(format).toBuffer();

/** As a phone held upright writes it: the sensor's rows, and a note that they are to be turned. */
export const turnedPhoto = (width = 600, height = 400): Promise<Buffer> =>
  halves(width, height).withMetadata({ orientation: 6 }).jpeg().toBuffer();

/** With the place it was taken at, a colour profile and XMP. */
export const locatedPhoto = (width = 600, height = 400): Promise<Buffer> =>
  halves(width, height)
    .withIccProfile('p3')
    .withExif({
      IFD0: { Make: 'Lens & Daughters', Copyright: 'somebody' },
      IFD3: {
        GPSLatitudeRef: 'N',
        GPSLatitude: '51/1 30/1 0/1',
        GPSLongitudeRef: 'W',
        GPSLongitude: '0/1 7/1 0/1',
      },
    })
    .withXmp(
      '<x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#"/></x:xmpmeta>',
    )
    .jpeg()
    .toBuffer();
