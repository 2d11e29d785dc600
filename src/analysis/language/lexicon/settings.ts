/** Where things go and whom they are for. Written by hand (no source); folded, lower case. */
import { wordSet } from '../../../text/word-set.ts';

/** Rooms and places that shoppers write after a thing: "accent chairs living room". */
export const rooms = wordSet(`
  indoor indoors outdoor outdoors outside inside kitchen bathroom bedroom bedrooms hallway entryway entry garage nursery
  playroom dorm office garden balcony patio porch deck lawn yard backyard poolside greenhouse conservatory attic
  basement kitchenette terrace allotment farmhouse apartment flat classroom school dining living guest
  windowsill tabletop countertop underbed bedside ceiling wall hotel restaurant campsite`);

/** Ends in two words: "living room", "guest bedroom". */
export const roomBefore = wordSet(
  'living dining guest laundry play family bed bath utility mud sun game drawing dressing sitting',
);

/** For whom a thing is. */
export const audiences = wordSet(`
  kids kid children childrens child's children's toddler toddlers baby babies infant infants boys boy girls girl men mens
  men's women womens women's ladies lady gents adult adults teen teens teenager teenagers unisex him her dog dogs cat
  cats pets beginner beginners couples mum dad seniors elderly students`);
