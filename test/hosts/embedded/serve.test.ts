import { mkdir, mkdtemp, rm, writeFile } from "node:fs/promises";
import { request } from "node:http";
import { tmpdir } from "node:os";
import path from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { serve } from "../../../src/hosts/embedded/serve.mjs";

let folder: string;
let served: Awaited<ReturnType<typeof serve>>;
let origin: string;

beforeAll(async () => {
  folder = await mkdtemp(path.join(tmpdir(), "woodlot-"));
  await mkdir(path.join(folder, "dist/embedded"), { recursive: true });
  await writeFile(path.join(folder, "secret.txt"), "secret");
  await writeFile(path.join(folder, "dist/embedded/index.html"), "<p>page</p>");
  await writeFile(path.join(folder, "dist/functions.json"), "{}");
  served = await serve(path.join(folder, "dist"), 0);
  origin = new URL(served.url).origin;
});
afterAll(async () => {
  await served.close();
  await rm(folder, { recursive: true });
});

/** Asks for a path as it stands, without the cleaning that fetch does. */
const raw = (asked: string): Promise<number | undefined> =>
  new Promise((resolve, reject) => {
    request(origin, { path: asked, method: "GET" }, (answer) => {
      answer.resume();
      resolve(answer.statusCode);
    })
      .on("error", reject)
      .end();
  });

describe("the page's server", () => {
  it("gives the page, with its type and a policy that lets it ask nobody else", async () => {
    const answer = await fetch(served.url);
    expect(await answer.text()).toBe("<p>page</p>");
    expect(answer.headers.get("content-type")).toBe("text/html; charset=utf-8");
    const policy = answer.headers.get("content-security-policy") ?? "";
    expect(policy).toContain("default-src 'self'");
    expect(policy).not.toContain("'unsafe-eval'"); // compiled code, 'wasm-unsafe-eval', is what the planner needs
    expect((await fetch(`${origin}/functions.json`)).headers.get("content-type")).toBe(
      "application/json; charset=utf-8",
    );
  });

  it("gives the page at its root too, and 404 for what is not there", async () => {
    expect(await (await fetch(`${origin}/`)).text()).toBe("<p>page</p>");
    expect((await fetch(`${origin}/none.js`)).status).toBe(404);
  });

  it.each([
    "/../secret.txt",
    "/..%2fsecret.txt",
    "/%2e%2e/secret.txt",
    "/embedded/..%2f..%2fsecret.txt",
    "/..%5csecret.txt",
    "/%00",
    "/%zz",
  ])("does not leave its folder for %s", async (asked) => {
    expect([403, 404]).toContain(await raw(asked));
  });

  it("only reads", async () => {
    expect((await fetch(served.url, { method: "POST", body: "x" })).status).toBe(405);
  });

  it("takes the next port when one is taken", async () => {
    const taken = Number(new URL(served.url).port);
    const second = await serve(folder, taken);
    expect(Number(new URL(second.url).port)).toBeGreaterThan(taken);
    await second.close();
  });
});
