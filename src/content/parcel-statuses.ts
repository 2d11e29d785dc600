/** What the words of a status column say became of a parcel, in the languages that lists come in. Common practice, no source. */
import { foldWords } from '../text/fold.ts';

/** What a status may say. */
export type StatusSense = 'delivered' | 'lost' | 'returned' | 'travelling';

const either = (words: string): string =>
  words
    .split('|')
    .map((word) => foldWords(word))
    .join('|');

/** Only back to who sent it: what is returned to a depot is on its way still. */
const RETURNED = new RegExp(
  `^(?:(?:undeliverable|undelivered|refused|failed)\\W+)?(?:being )?(?:return(?:ed|ing)?(?: shipment| parcel)?(?: to (?:the )?(?:sender|shipper|seller|origin|merchant))?|rts)$|^(?:${either(
    'retoure|rücksendung|zurück an|retourne|retour a l|retour expediteur|retour a expediteur|renvoye|devuelto|devolucion|reso al|restituito|rientrat|retour afzender|teruggestuurd|retour$|retur$|retur till|returnerad|returneret|returnert|palautettu|zwrot|zwrocon|devolvido|devolucao|返送|返品',
  )})`,
);
const LOST = new RegExp(
  `^(?:(?:declared|presumed|reported|believed|parcel) )?(?:lost|missing)(?: in (?:transit|the post)| by carrier)?$|^(?:${either(
    '(?:colis|paket|pacco|paquete|pakket|paczka|encomenda){0,1} ?(?:egare|perdu|verloren|vermist|smarrito|perdido|extraviado|zaginela|extraviada)|bortkommet|tapt$|mistet$|kadonnut|verloren|verschollen|verlust|perdu|egare|extraviad|perdid|smarrit|pers[oa]$|vermist|verloren gegaan|kwijt|forlorad|forsvunnen|borttappad|zaginio|zaginel|zgubi|紛失',
  )})`,
);
const DELIVERED = new RegExp(
  `^(?:delivered|delivery (?:complete|completed|successful)|left (?:with|in|at)|handed (?:over )?to (?:resident|neighbou?r|recipient)|signed for|${either(
    'zugestellt|ausgeliefert|beim nachbarn|an nachbar|nachbar|abgegeben|livre|livree|remis(?:e)? (?:au|a|en)|distribue|entregad|entregue|consegnat|bezorgd|afgeleverd|bij buren|leverera|levererat|leveret|levert|afleveret|toimitettu|utlamna|doreczon|dostarczon|odebran|配達完了|配達済|お届け済|隣人に配達',
  )})`,
);
/** Delivered words with something before or behind them that takes it back. */
const NOT_DELIVERED =
  /^(?:not|un|nicht|non|no|niet|ej|inte|nie|nao)\b|\b(?:partial|attempt|fail|soon|today|depot|hub|facility)/;

/** Words for a parcel that is on its way as it should be. */
const TRAVELLING = new RegExp(
  `^(?:${either(
    `in transit|transit|on its way|on the way|travelling|shipped|sent|dispatched|despatched|posted|accepted|collected|picked up
    |sorted|processing|processed|pending|label created|label printed|pre transit|pre-transit|info received|information received
    |manifested|arrived at (?:[^ ]+ ){0,3}(?:depot|hub|facility|centre|center|office)|at (?:[^ ]+ ){0,2}(?:depot|hub|facility)
    |departed|out for delivery|with (?:the){0,1} ?(?:driver|courier|carrier)|customs cleared|not yet(?: delivered)?|no|not delivered
    |unterwegs|in zustellung|versendet|versandt|in bearbeitung|en cours d'?acheminement|en cours de livraison|en transit|expedie
    |en camino|en transito|en reparto|enviado|in viaggio|in transito|in consegna|spedito|onderweg|verzonden|in behandeling
    |pa vag|undervejs|underveis|matkalla|under transport|skickad|w drodze|wyslano|wyslana|nadano|nadana|w doreczeniu|em transito|a caminho|expedido|輸送中|配送中|配達中|発送済`
      .split('\n')
      .map((line) => line.trim())
      .join(''),
  )})(?: (?:to|at|in|from|for|by|with|on|via|nach|in|vers|a|naar|till|do)\\b.{0,60})?$`,
  'u',
);

/** What stands behind the first of these says more, and nothing else: "Delivered - left in porch". */
const BEHIND = / [-–—] |[,;:(/]/;

/** What a status says; undefined for a word that no rule reads. */
export const senseOfStatus = (status: string): StatusSense | undefined => {
  const whole = foldWords(status).replace(/_/g, ' ');
  const parts = whole.split(BEHIND).map((part) => part.trim());
  if (parts.some((part) => LOST.test(part))) return 'lost';
  if (parts.some((part) => RETURNED.test(part))) return 'returned';
  const [first = ''] = parts;
  if (DELIVERED.test(first) && !NOT_DELIVERED.test(whole)) return 'delivered';
  return TRAVELLING.test(first) ? 'travelling' : undefined;
};
