/** The picture cards' paper in English. */

/** The words around the cards; what stands on them is the records'. */
export const cards = {
  /** Which of the things it is, on its card. */
  number: (number: number): string => `No. ${number}`,
  title: (month: string, theme: string, box: string): string => `Cards of ${month}, ${theme} · ${box}`,
  heading: (month: string): string => `Cards of ${month}`,
  plan: (cards: number): string =>
    `${cards} tall cards, to be posted in this order, each with its picture text and its link; beside each a pin and a square of the same.`,
  sealed: 'They show what is in a sealed box: post them after the reveal.',
  covered: 'Show what an app’s own controls cover',
  card: (number: number, names: string): string => `Card ${number}: ${names}`,
  tall: 'Tall card',
  pin: 'Pin',
  square: 'Square',
  /** Pixels. */
  size: (width: number, height: number): string => `${width} × ${height}`,
  text: 'Picture text',
  /** What is seen, after what the card says. */
  picture: (alt: string): string => `Picture: ${alt}`,
  link: 'Link to paste as one that can be tapped',
  copy: 'Copy',
  copyText: (number: number): string => `Copy the picture text of card ${number}`,
  copyLink: (number: number): string => `Copy the link of card ${number}`,
  copied: 'Copied.',
  refused: 'Your browser did not allow it: mark the text and copy it by hand.',
  keeping: {
    heading: 'Post them, and keep them where newcomers look',
    steps: [
      'Post the cards one after another, the lead item first. Give each its picture text, for people who cannot see it, and put its link on it as a link that can be tapped, in the free strip above the foot.',
      'When they are up, put the whole set on your profile under the month’s name, where it stays after the day is over. Newest month first; keep three or four months, and take down what can no longer be had.',
      'A newcomer opens the newest set first. When another call holds, build again, and replace the last card.',
      'Pins go on a board of the box, each with its link; squares go where a feed shows squares.',
    ],
  },
  /** The text file. `number` of a card. */
  file: {
    text: 'Picture text',
    link: 'Link',
    pin: 'pin',
    square: 'square',
  },
};
