import { bridge } from './bridge.ts';
import type { ComponentName, ComponentProps } from './component-source.ts';
import type { HostedPage } from './rehouse.ts';

/** For the pages that `writeRoute` makes: Astro's static paths of a course. */
export async function hostedPaths(
  course: number,
): Promise<{ params: { page: string | undefined } }[]> {
  return (await bridge().pages(course)).map((page) => ({ params: { page } }));
}

/** For the same: one of them. */
export function hostedPage(course: number, page: string | undefined): Promise<HostedPage> {
  return bridge().page(course, page);
}

/** For the components: one of them as HTML. @param page the same object for all components of a page. */
export function renderComponent(name: ComponentName, props: object, page: object): Promise<string> {
  return bridge().component(name, props as ComponentProps, page);
}
