import type { DeskState } from '../contract/index.ts';
import { escapeHtml } from '../site/index.ts';
import { plainPage } from './plain-page.ts';

/**
 * The page of a course that cannot be shown yet. The desk's script lists on it what to mend, and loads the course as
 * soon as there is one.
 * @param styles addresses of the style sheets of the site.
 */
export function troublePage({ findings, trouble }: DeskState, styles: readonly string[]): string {
  const lead = trouble ?? (findings.length === 0 ? 'The course is being read.' : undefined);
  return plainPage({
    language: 'en',
    title: 'Nothing to show yet',
    styles,
    content: [
      `<p>${escapeHtml(lead ?? 'The course cannot be read as it stands.')}</p>`,
      '<p>This page becomes the course as soon as its files can be read.</p>',
    ],
  });
}
