// Light and dark: as the system says, or as the reader chooses on the sheet.

const listeners: ((colours: boolean) => void)[] = [];
const system = matchMedia("(prefers-color-scheme: dark)");

let printing = false;

/** Whether what is drawn now goes to paper. */
export function onPaper(): boolean { return printing; }

export function isDark(): boolean {
  if (printing) return false;
  const chosen = document.documentElement.dataset.theme;
  return chosen ? chosen === "dark" : system.matches;
}

/** Calls when the colours change, or when what is shown goes to paper or comes from it. */
export function onTheme(listener: (colours: boolean) => void): void { listeners.push(listener); }

export function colour(name: string): string {
  return getComputedStyle(document.documentElement).getPropertyValue(`--${name}`).trim();
}

export function startTheme(): void {
  const select = document.getElementById("theme") as HTMLSelectElement | null;
  const set = (theme: string) => {
    if (theme) document.documentElement.dataset.theme = theme; else delete document.documentElement.dataset.theme;
    for (const listener of listeners) listener(true);
  };
  let kept = "";
  try { kept = localStorage.getItem("gclint-theme") ?? ""; } catch { /* a page from disk may not be allowed to keep anything */ }
  if (select && (kept === "light" || kept === "dark")) { select.value = kept; set(kept); }
  select?.addEventListener("change", () => {
    set(select.value);
    try { localStorage.setItem("gclint-theme", select.value); } catch { /* as above */ }
  });
  for (const now of [true, false]) {
    addEventListener(now ? "beforeprint" : "afterprint", () => {
      const was = isDark();
      printing = now;
      for (const listener of listeners) listener(isDark() !== was);
    });
  }
  system.addEventListener("change", () => { for (const listener of listeners) listener(true); });
}
