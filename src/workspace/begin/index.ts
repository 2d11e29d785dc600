/** What begins a box and its cycles: answers, lists and photos in, planned files out. */
export { checkAnswer } from './check-answer.ts';
export { knownBox } from './known-box.ts';
export { fieldNamed, listThings } from './list.ts';
export { matchPhotos } from './match-photos.ts';
export { cautionsOf, planBox, planCycle, slugOf } from './plan-records.ts';
export { cycleBefore, nextMonth, proposeReveal, proposeShipped, todayIn } from './propose-dates.ts';
export { proposeKinds } from './propose-kind.ts';
export { addPictures, standingCycle } from './standing-cycle.ts';
