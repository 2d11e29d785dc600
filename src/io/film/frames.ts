/** A film's frames, painted as they are asked for: a scene is opened at its first frame and let go after its last. */
import type { Film } from '../../render/film.ts';
import { planesOver } from './planes.ts';
import { openScene, paintFrame, type Scene, type SceneGround } from './scenes.ts';

/** Frames of a film, made one at a time into the bytes that are given. */
export interface FrameMaker {
  readonly width: number;
  readonly height: number;
  /** Frames a second. */
  readonly rate: number;
  readonly frames: number;
  /** The first frame of each shot. */
  readonly cuts: readonly number[];
  /** Makes a frame; those of one shot are asked for in order, from its first. */
  readonly make: (frame: number, into: Uint8Array) => Promise<void>;
}

/** The frames of a film. */
export const framesOf = (film: Film, ground: SceneGround): FrameMaker => {
  const { width, height, rate, frames, shots } = film;
  const open = new Map<number, Promise<Scene>>();
  return {
    width,
    height,
    rate,
    frames,
    cuts: shots.map(({ from }) => from),
    make: async (frame, into) => {
      const index = shots.findLastIndex(({ from }) => from <= frame);
      const shot = shots[index];
      if (!shot) throw new Error(`Expected a shot with frame ${frame}`);
      // A piece that is encoded once more opens its scene once more.
      const scene = (frame === shot.from ? undefined : open.get(index)) ?? openScene(shot, film, ground);
      open.set(index, scene);
      await paintFrame(await scene, frame, planesOver(into, width, height));
      if (frame + 1 === shot.to) open.delete(index);
    },
  };
};
