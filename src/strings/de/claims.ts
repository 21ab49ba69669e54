import type { claims as english } from '../en/claims.ts';

/** Behauptungen in den Worten eines Lesers. */
export const claims: typeof english = {
  isolated: {
    holds: 'der Bauer auf {0} ist isoliert',
    denied: 'der Bauer auf {0} ist nicht isoliert',
  },
  doubled: {
    holds: 'auf der {0}-Linie steht ein Doppelbauer',
    denied: 'auf der {0}-Linie steht kein Doppelbauer',
  },
  backward: {
    holds: 'der Bauer auf {0} ist rückständig',
    denied: 'der Bauer auf {0} ist nicht rückständig',
  },
  passed: {
    holds: 'der Bauer auf {0} ist ein Freibauer',
    denied: 'der Bauer auf {0} ist kein Freibauer',
  },
  'hanging-pawns': {
    holds: 'die Bauern auf {0} und {1} sind hängende Bauern',
    denied: 'die Bauern auf {0} und {1} sind keine hängenden Bauern',
  },
  outpost: { holds: '{0} ist ein Vorposten', denied: '{0} ist kein Vorposten' },
  open: { holds: 'die {0}-Linie ist offen', denied: 'die {0}-Linie ist nicht offen' },
  'half-open': {
    holds: 'die {0}-Linie ist halboffen für {1}',
    denied: 'die {0}-Linie ist nicht halboffen für {1}',
  },
  'bishop-pair': { holds: '{0} hat das Läuferpaar', denied: '{0} hat das Läuferpaar nicht' },
  'opposite-bishops': {
    holds: 'die Läufer sind ungleichfarbig',
    denied: 'die Läufer sind nicht ungleichfarbig',
  },
  attacks: { holds: '{0} greift {rest} an', denied: '{0} greift {rest} nicht an' },
  defends: { holds: '{0} deckt {rest}', denied: '{0} deckt {rest} nicht' },
  defended: { holds: '{0} ist gedeckt', denied: '{0} ist nicht gedeckt' },
  loose: { holds: '{0} ist ungedeckt', denied: '{0} ist nicht ungedeckt' },
  'shut-in': {
    holds: 'der Läufer auf {0} ist eingesperrt',
    denied: 'der Läufer auf {0} ist nicht eingesperrt',
  },
  clear: { holds: 'zwischen {0} steht nichts', denied: 'zwischen {0} steht etwas' },
};
