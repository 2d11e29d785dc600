declare module 'heic-decode' {
  interface Decoded {
    readonly width: number;
    readonly height: number;
    /** RGBA, 8 bits a channel. */
    readonly data: Uint8ClampedArray;
  }
  interface Undecoded {
    readonly width: number;
    readonly height: number;
    decode(): Promise<Decoded>;
  }
  const decode: {
    all(input: { buffer: Uint8Array }): Promise<readonly Undecoded[] & { dispose(): void }>;
  };
  // biome-ignore lint/style/noDefaultExport: describes a package that has one
  export default decode;
}
