// Bundles the page's script and style into ../built and keeps the licences of what is in the bundle beside it.
//   npm ci && npm run build
// The result depends on package-lock.json and the files here alone; record.json says from which it was made.
import { createHash } from "node:crypto";
import { readdirSync, readFileSync, writeFileSync, mkdirSync, existsSync } from "node:fs";
import { dirname, join, relative } from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";

const here = dirname(fileURLToPath(import.meta.url));
const out = join(here, "..", "built");
mkdirSync(out, { recursive: true });

const options = {
  bundle: true, minify: true, charset: "utf8", legalComments: "none", target: ["es2022"], absWorkingDir: here,
  metafile: true, logLevel: "warning",
};
const made = await build({ ...options, entryPoints: ["main.ts"], format: "iife", outfile: join(out, "page.js") });
await build({ ...options, entryPoints: ["page.css"], outfile: join(out, "page.css") });

const packages = new Set();
for (const input of Object.keys(made.metafile.inputs)) {
  const found = input.match(/^node_modules\/((?:@[^/]+\/)?[^/]+)\//);
  if (found) packages.add(found[1]);
}
let licences = "What the page's script is made of, beside gclint's own code.\n";
for (const name of [...packages].sort()) {
  const folder = join(here, "node_modules", name);
  const about = JSON.parse(readFileSync(join(folder, "package.json"), "utf8"));
  const file = readdirSync(folder).find((each) => /^licen[cs]e/i.test(each));
  const text = file && existsSync(join(folder, file)) ? readFileSync(join(folder, file), "utf8").trim() : "";
  if (!text) throw new Error(`${name} has no licence file`);
  licences += `\n${"-".repeat(80)}\n${name} ${about.version} (${about.license})\n\n${text.replace(/\r\n/g, "\n")}\n`;
}
writeFileSync(join(out, "LICENSES.txt"), licences);

const sources = readdirSync(here).filter((name) => /\.(ts|css|mjs|json)$/.test(name)).sort();
const record = Object.fromEntries([...sources.map((name) => join(here, name)),
  ...["page.js", "page.css", "LICENSES.txt"].map((name) => join(out, name))]
  .map((file) => [relative(join(here, ".."), file), createHash("sha256").update(readFileSync(file)).digest("hex")]));
writeFileSync(join(out, "record.json"), JSON.stringify(record, null, 1) + "\n");
