/**
 * Runs before all else on a page of a course that stands in another site's layout: such a page may have two addresses,
 * the site's and the course's, and all addresses within the course are relative to the latter.
 */
const { page } = (document.currentScript as HTMLScriptElement).dataset;
if (page !== undefined && location.pathname !== page) {
  history.replaceState(history.state, '', page + location.search + location.hash);
}
