/**
 * Texts that are hard to cut, written for this purpose, each as its sentences. Every second one (`keptAside`) was
 * looked at only when the rules were written.
 */
const CASES: Readonly<Record<string, string>> = {
  en: `
Dr. Finch planted the first one. | Mrs. Ash dug it up again.
We met at St. Ives on a wet day. | Nobody minded.
The potter, J. R. Marsh, works alone. | Her kiln is small.
Sow at 7 a.m. or later. | Water in the evening.
It opens at 7 p.m. | Bring a torch.
Use approx. 30 ml of oil. | Wipe off the rest.
The pot holds approx. One litre, says its card. | It holds less.
See No. 5 Mill Lane for the shop. | Knock twice.
“Why not?” she asked. | Nobody knew.
“It leaks!” he cried, and it did. | We mended it.
She said “Never again.” | Then she planted more.
It was made in the U.K. by two sisters. | They are twins.
We sell it in the U.S. | They like it there.
Sent by U.S. Mail in a week. | No more was heard.
We sowed them in 2024. | 12 seeds came up.
The seeds came late. | 3 of them were blue.
It is 3.5 cm wide. | It costs £4.20.
Bring gloves, twine, etc. | You will need a knife too.
Bring gloves, twine, etc. and a knife. | Then begin.
Made by Ash & Co. in a shed. | It smells of cedar.
Made by Ash & Co. | The shed smells of cedar.
So did I. | Then the rain came.
Choose size B. | It fits most pots.
1. Soak the seeds. | 2. Sow them thinly.
Really? | Yes! | Well, almost.
Wait... what was that? | A wren.
They waited... | The kettle boiled.
(It was cold.) | We lit the stove.
It was cold (about 4 °C). | We lit the stove.
Prof. A. Reed’s book, vol. 2, says so. | We agree.
Use it for herbs, e.g. Thai basil, and for moss. | Keep it dry.
Its true name, i.e. Salvia rosmarinus, is newer. | Few use it.
The pot vs. Goliath: the pot won. | Goliath was a goose.
See fig. 3 and p. 12 for more. | It is easy.
Mix at a ratio of 1:10. | Stir well.
The maker is Mr. Oakes Jr. of Leeds. | His father made spoons.
He works with Mr. Oakes Sr. | The two never quarrel.
Visit example.com for more. | It is free.
She calls it “No. 5” and smiles. | We smile too.
Mt. Snow roses flower late. | Wait for them.
`,
  de: `
Dr. Fink pflanzte den ersten. | Frau Esche grub ihn aus.
Am 3. Mai kam der Regen. | Wir säten trotzdem.
Man nimmt z. B. Tomaten. | Gurken gehen auch.
Man nimmt z.B. Tomaten. | Gurken gehen auch.
Er wiegt ca. 300 Gramm. | Er ist aus Ton.
Nimm Schnur, Scheren usw. | Dann geht es los.
Sie wohnt in der Mühlenstr. 5 im Hof. | Die Klingel fehlt.
Das ist Nr. 7 von zwölf. | Mehr gibt es nicht.
»Warum nicht?« fragte sie. | Niemand wusste es.
„Es tropft!“, rief er. | Wir flickten es.
Es waren zwölf. | 3 davon blühten.
Im 19. Jahrhundert war das neu. | Heute ist es alt.
Prof. Dr. A. Reet schrieb das Buch. | Wir lasen es.
Der Topf, d. h. Ton und Glasur, bleibt draußen. | Er hält Frost aus.
Kräuter, u. a. Thymian, mögen Sand. | Wasser mögen sie nicht.
Versand inkl. Karton und Papier. | Alles ist kompostierbar.
Er hält max. Frost von zehn Grad aus. | Mehr nicht.
Die Saat vom 2. Juni 2024 keimte. | Die andere nicht.
Es kostet 3,50 Euro. | Der Deckel kostet 1.200,50 Euro mehr.
Wirklich? | Ja! | Fast.
Für Gefäße bzw. Schalen aus Ton. | Nicht für Holz.
Vgl. Abb. 3 im Heft. | Dort steht mehr.
Das Beet hat 12. | Dann kommen noch mehr.
St. Gallen liegt höher. | Dort blüht es später.
`,
  fr: `
M. Pinson a planté le premier. | Mme Frêne l’a déterré.
« Pourquoi pas ? » demanda-t-elle. | Personne ne savait.
« Ça fuit ! » cria-t-il. | On le répara.
Pourquoi ? | Parce que l’argile est lourde.
Le pot pèse env. 300 g à vide. | Il est en terre.
On le trouve p. ex. Rue des Saules. | Il y est moins cher.
Prenez de la ficelle, des gants, etc. | Il faut aussi un couteau.
Le Dr. Roseau écrivit le livre. | Nous l’avons lu.
Voir fig. 3 et p. 12 du livret. | C’est simple.
Elle est née en 1950 av. J.-C. selon lui. | Il plaisantait.
Il coûte 3,50 €. | Le couvercle coûte 1,20 €.
MM. Pinson et Frêne arrivèrent. | Ils riaient.
Nous avons semé en 2024. | 12 graines ont levé.
Vraiment ? | Oui ! | Enfin, presque.
Elle dit : « Jamais plus. » | Puis elle en planta d’autres.
J. R. Marais tourne seule. | Son four est petit.
C’est le no. 5 de la série. | Il est bleu.
(Il faisait froid.) | On alluma le poêle.
`,
  ja: `
種を水につけます。 | 翌日まきます。
「なぜだめなの？」と彼女は聞いた。 | 誰も知らなかった。
「漏れている！」と彼は叫んだ。 | みんなで直した。
本当？ | はい！ | たぶん。
「はい。」 | そこで雨が降った。
重さは3.5kgです。 | 深さは12cmです。
Dr. スミスが最初の一つを植えた。 | 次の日に抜いた。
「もういい。」って言った。 | でもまた植えた。
えっ？！ | まさか。
土は乾いていますか（五月でも？）と聞かれます。 | はい、乾いています。
「水はいらない。」という人もいる。 | 私は少しやる。
箱を開けた。 | 「わあ！」 | 猫が出てきた。
`,
};

/** One text of a language with the sentences that a reader finds in it. */
export interface SentenceCase {
  readonly lang: string;
  readonly text: string;
  readonly sentences: readonly string[];
}

const cases: readonly SentenceCase[] = Object.entries(CASES).flatMap(([lang, lines]) =>
  lines
    .trim()
    .split('\n')
    .map((line) => {
      const sentences = line.split('|').map((sentence) => sentence.trim());
      return { lang, text: sentences.join(lang === 'ja' ? '' : ' '), sentences };
    }),
);

export const lookedAt = cases.filter((_, i) => i % 2 === 0);
export const keptAside = cases.filter((_, i) => i % 2 === 1);
