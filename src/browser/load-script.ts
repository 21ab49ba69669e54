/** Loads a script of the site once more beside those of the page. @throws Error with its address. */
export function loadScript(address: string): Promise<void> {
  return new Promise((resolve, reject) => {
    const script = document.createElement('script');
    script.src = address;
    script.addEventListener('load', () => resolve());
    script.addEventListener('error', () => reject(new Error(address)));
    document.head.append(script);
  });
}
