const words: Readonly<Record<string, string>> = {
  text: 'writing chapters',
  pages: 'building pages',
  images: 'drawing pictures',
  done: 'done',
};

/** One line on a terminal that tells what is being done; silent where there is no terminal. */
export function createProgressLine(stream: NodeJS.WriteStream) {
  const terminal = stream.isTTY;
  return {
    show(stage: string, done: number, all: number): void {
      if (!terminal) return;
      const numbers = stage === 'images' ? ` ${done}/${all}` : '';
      stream.write(`\r\x1b[K${words[stage] ?? stage}${numbers}`);
    },
    clear(): void {
      if (terminal) stream.write('\r\x1b[K');
    },
  };
}
