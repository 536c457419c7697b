// What several families say of a size.
export const GAP = 'zwischen Nachbarn an den Ecken frei';
export const TAB_LENGTH = 'Außenlänge der Laschen';
export const CORNER_TAB_LENGTH = 'Außenlänge der Ecklaschen';
export const ROW_EDGE =
  'von den Seiten bis zur Mitte des ersten und des letzten; gleichmäßig verteilt, wenn weggelassen';
export const BOX_LENGTH = 'über West- und Ostwand, oder zwischen ihnen, wo Innenmaße gegeben sind';
export const BOX_WIDTH = 'über Süd- und Nordwand, oder zwischen ihnen';
export const BOX_DIMENSIONS = 'außen oder innen: wie Länge, Breite und Höhe gemeint sind';
export const BOX_CORNER =
  'offen (rechtwinklig ausgeklinkt) oder mit Laschen (der Nord- und Südwand hinter den anderen)';
export const CROWN = 'Breite der geraden Oberkante';
