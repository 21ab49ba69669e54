/** Signs that few fonts have, each with its class: the style sheet draws them over the text. */
export const drawnSigns: Readonly<Record<string, string>> = {
  '⩲': 'slight-white',
  '⩱': 'slight-black',
  '±': 'clear-white',
  '∓': 'clear-black',
};
