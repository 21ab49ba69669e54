import type { claims as english } from '../en/claims.ts';

/** Afirmaciones en palabras del lector. */
export const claims: typeof english = {
  isolated: { holds: 'el peón de {0} está aislado', denied: 'el peón de {0} no está aislado' },
  doubled: {
    holds: 'hay peones doblados en la columna {0}',
    denied: 'no hay peones doblados en la columna {0}',
  },
  backward: { holds: 'el peón de {0} está retrasado', denied: 'el peón de {0} no está retrasado' },
  passed: { holds: 'el peón de {0} está pasado', denied: 'el peón de {0} no está pasado' },
  'hanging-pawns': {
    holds: 'los peones de {0} y {1} son peones colgantes',
    denied: 'los peones de {0} y {1} no son peones colgantes',
  },
  outpost: { holds: '{0} es un puesto avanzado', denied: '{0} no es un puesto avanzado' },
  open: { holds: 'la columna {0} está abierta', denied: 'la columna {0} no está abierta' },
  'half-open': {
    holds: 'la columna {0} está semiabierta para las {1}',
    denied: 'la columna {0} no está semiabierta para las {1}',
  },
  'bishop-pair': {
    holds: 'la pareja de alfiles es de las {0}',
    denied: 'la pareja de alfiles no es de las {0}',
  },
  'opposite-bishops': {
    holds: 'los alfiles son de distinto color',
    denied: 'los alfiles no son de distinto color',
  },
  attacks: { holds: '{0} ataca {rest}', denied: '{0} no ataca {rest}' },
  defends: { holds: '{0} defiende {rest}', denied: '{0} no defiende {rest}' },
  defended: { holds: '{0} está defendida', denied: '{0} no está defendida' },
  loose: { holds: 'nada defiende {0}', denied: 'algo defiende {0}' },
  'shut-in': {
    holds: 'el alfil de {0} está encerrado',
    denied: 'el alfil de {0} no está encerrado',
  },
  clear: { holds: 'entre {0} no hay nada', denied: 'entre {0} hay algo' },
};
