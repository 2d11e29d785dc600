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

/**
 * People by the word for them, folded, as they stand before a thing and behind it: "women's sweatshirt", "sweatshirt for
 * women". A baby is not among them: a baby blanket is no blanket that is also for others.
 */
export const people: ReadonlyMap<string, { readonly before: string; readonly behind: string }> = new Map(
  [
    ["women's", 'women', 'women womens woman ladies lady'],
    ["men's", 'men', 'men mens man gents gentlemen'],
    ['kids', 'kids', 'kids kid'],
    ["children's", 'children', 'children childrens child'],
    ['girls', 'girls', 'girls girl'],
    ['boys', 'boys', 'boys boy'],
    ['toddler', 'toddlers', 'toddlers toddler'],
    ['teen', 'teens', 'teens teen teenager teenagers'],
    ['adult', 'adults', 'adults adult'],
    ['beginner', 'beginners', 'beginners beginner'],
  ].flatMap(([before = '', behind = '', words = '']) =>
    words.split(' ').map((word) => [word, { before, behind }] as const),
  ),
);

/** What makers add to their names to say what they make or where. */
export const trades = wordSet(`
  pottery forge mill mills bakery bindery apiary press studio studios workshop co company ltd inc llc knots goods house
  bros brothers supply supplies design designs gifts foods farm farms kitchen kitchens garden gardens roastery brewery
  distillery dairy preserves instruments ceramics textiles leather books papers paper toys teas coffee candles
  turnery foundry edge`);

/** Animals that are kept and bought for, in the singular. */
export const pets = wordSet(
  'dog puppy cat kitten pet rabbit bunny hamster gerbil ferret budgie parrot canary hen chicken horse pony tortoise bird fish',
);
