/** Claims in a reader's words, true and denied: `0` and `1` are what stands behind the name, `rest` all from `1` on. */
export const claims = {
  isolated: { holds: 'the pawn on {0} is isolated', denied: 'the pawn on {0} is not isolated' },
  doubled: {
    holds: 'pawns are doubled on the {0}-file',
    denied: 'no pawns are doubled on the {0}-file',
  },
  backward: { holds: 'the pawn on {0} is backward', denied: 'the pawn on {0} is not backward' },
  passed: { holds: 'the pawn on {0} is passed', denied: 'the pawn on {0} is not passed' },
  'hanging-pawns': {
    holds: 'the pawns on {0} and {1} are hanging pawns',
    denied: 'the pawns on {0} and {1} are not hanging pawns',
  },
  outpost: { holds: '{0} is an outpost', denied: '{0} is not an outpost' },
  open: { holds: 'the {0}-file is open', denied: 'the {0}-file is not open' },
  'half-open': {
    holds: 'the {0}-file is half-open for {1}',
    denied: 'the {0}-file is not half-open for {1}',
  },
  'bishop-pair': { holds: '{0} has the two bishops', denied: '{0} does not have the two bishops' },
  'opposite-bishops': {
    holds: 'the bishops are of opposite colours',
    denied: 'the bishops are not of opposite colours',
  },
  attacks: { holds: '{0} attacks {rest}', denied: '{0} does not attack {rest}' },
  defends: { holds: '{0} defends {rest}', denied: '{0} does not defend {rest}' },
  defended: { holds: '{0} is defended', denied: '{0} is not defended' },
  loose: { holds: 'nothing defends {0}', denied: 'something defends {0}' },
  'shut-in': { holds: 'the bishop on {0} is shut in', denied: 'the bishop on {0} is not shut in' },
  clear: { holds: 'nothing stands between {0}', denied: 'something stands between {0}' },
};
