/** Runs a script of this site and waits until it has run. */
export function loadScript(source: string): Promise<void> {
  return new Promise((resolve, reject) => {
    const script = document.createElement("script");
    script.src = source;
    script.onload = () => resolve();
    script.onerror = () => reject(new Error(`${source} could not be loaded. Reload the page.`));
    document.head.append(script);
  });
}
