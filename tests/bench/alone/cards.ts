/** A hundred social cards with the same course and author, one after another, in one process. */
const { cardJob, makePng } = await import('../../../dist/draw/index.js' as string);

const count = 100;
const placements = [
  'rnbqkb1r/pp2pppp/2p2n2/3p4/2PP4/2N5/PP2PPPP/R1BQKBNR',
  'r1bq1rk1/pp1nbppp/2p1pn2/3p4/2PP4/2N1PN2/PPQ1BPPP/R1B2RK1',
];
const ends = ['the capture', 'an early check', 'the pawn that stays at home and waits for its day'];

async function makeCard(index: number): Promise<void> {
  const job = cardJob({
    course: 'The Slow Exchange',
    chapter: `Chapter ${index}: what to do after ${ends[index % ends.length]}`,
    author: 'Mira Lindqvist',
    placement: placements[index % placements.length],
    view: 'white',
  });
  makePng(await job.draw(), job);
}

// What is made once in a process is no card's own.
for (let index = 0; index < 10; index += 1) await makeCard(index);
const before = process.cpuUsage();
for (let index = 0; index < count; index += 1) await makeCard(10 + index);
const { user, system } = process.cpuUsage(before);
console.log(JSON.stringify({ seconds: (user + system) / 1e6 / count }));
