/** Writes the pages of the handbook that are made from the code: `node scripts/make-handbook-pages.ts`. */
import { readFileSync, writeFileSync } from 'node:fs';
import { makeClaimsPage } from './handbook/claims-page.ts';
import { makeJsonPage } from './handbook/json-page.ts';
import { fillTables } from './handbook/looks-tables.ts';
import { makeRulesPage } from './handbook/rules-page.ts';

const chapters = new URL('../content/handbook/chapters/', import.meta.url);
const looks = new URL('07-looks.md', chapters);
writeFileSync(looks, fillTables(readFileSync(looks, 'utf8')));
writeFileSync(new URL('08-rules.md', chapters), makeRulesPage());
writeFileSync(new URL('09-claims.md', chapters), makeClaimsPage());
writeFileSync(new URL('11-json.md', chapters), makeJsonPage());
