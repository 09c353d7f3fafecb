// A browser without a window, driven over a pipe: nothing to install but the browser.
import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** Starts a browser. Its pages are in `page()`; `close()` ends it. */
export async function startBrowser(program = process.env.CHROMIUM ?? 'chromium') {
  const profile = mkdtempSync(join(tmpdir(), 'page-'));
  const browser = spawn(program, ['--headless=new', '--no-sandbox', '--disable-gpu', '--disable-dev-shm-usage', '--no-first-run', '--hide-scrollbars',
    '--remote-debugging-pipe', `--user-data-dir=${profile}`, 'about:blank'], { stdio: ['ignore', 'ignore', 'ignore', 'pipe', 'pipe'] });
  const waiting = new Map(), listeners = [];
  let last = 0, rest = '';
  const failed = new Promise((_, reject) => browser.on('error', reject));
  browser.stdio[4].setEncoding('utf8');
  browser.stdio[4].on('data', text => {
    const messages = (rest + text).split('\0');
    rest = messages.pop();
    for (const message of messages.map(one => JSON.parse(one))) {
      const answer = waiting.get(message.id);
      waiting.delete(message.id);
      if (!answer) for (const listener of listeners) listener(message);
      else if (message.error) answer.reject(new Error(`${answer.method}: ${message.error.message}`));
      else answer.resolve(message.result);
    }
  });
  const send = (method, params = {}, sessionId) => Promise.race([failed, new Promise((resolve, reject) => {
    const id = ++last;
    waiting.set(id, { method, resolve, reject });
    browser.stdio[3].write(`${JSON.stringify({ id, method, params, sessionId })}\0`);
  })]);

  async function page(address) {
    const { targetId } = await send('Target.createTarget', { url: 'about:blank' });
    const { sessionId } = await send('Target.attachToTarget', { targetId, flatten: true });
    const call = (method, params) => send(method, params, sessionId);
    /** What the page complains of: errors of scripts, and what its policy forbids. */
    const complaints = [], events = [];
    listeners.push(message => {
      if (message.sessionId !== sessionId) return;
      events.push(message.method);
      if (message.method === 'Runtime.exceptionThrown') complaints.push(message.params.exceptionDetails.exception?.description ?? message.params.exceptionDetails.text);
      if (message.method === 'Log.entryAdded' && message.params.entry.level === 'error') complaints.push(message.params.entry.text);
      if (message.method === 'Page.javascriptDialogOpening') complaints.push(`dialog: ${message.params.message}`);
      if (message.method === 'Network.requestWillBeSent' && /^(https?|wss?|ftp):/.test(message.params.request.url)) complaints.push(`asked for ${message.params.request.url}`);
    });
    for (const domain of ['Page', 'Runtime', 'Log', 'Network']) await call(`${domain}.enable`);

    /** The value of an expression, which may be a promise. */
    async function value(expression) {
      const { result, exceptionDetails } = await call('Runtime.evaluate', { expression, awaitPromise: true, returnByValue: true });
      if (exceptionDetails) throw new Error(`${exceptionDetails.exception?.description ?? exceptionDetails.text} in ${expression}`);
      return result.value;
    }
    async function until(expression, what = expression) {
      const end = Date.now() + 30_000;
      while (!await value(expression)) {
        if (Date.now() > end) throw new Error(`not within 30 s: ${what}`);
        await new Promise(resolve => setTimeout(resolve, 20));
      }
    }
    const KEYS = { Tab: 9, Enter: 13, Escape: 27, ' ': 32, ArrowDown: 40, ArrowUp: 38, Backspace: 8, Delete: 46, End: 35, Home: 36 };
    /** A key as a person presses it; `modifiers` 8 is shift, 2 control. */
    async function press(key, modifiers = 0) {
      const code = { key, code: key === ' ' ? 'Space' : key, windowsVirtualKeyCode: KEYS[key], modifiers };
      const text = key === 'Enter' ? '\r' : key === ' ' ? ' ' : undefined;
      await call('Input.dispatchKeyEvent', { type: text ? 'keyDown' : 'rawKeyDown', text, ...code });
      await call('Input.dispatchKeyEvent', { type: 'keyUp', ...code });
    }
    async function type(text) {
      for (const letter of text) await call('Input.dispatchKeyEvent', { type: 'char', text: letter });
    }
    /** Goes to a field, empties it as a person would, and types. */
    async function fill(id, text) {
      await value(`document.getElementById(${JSON.stringify(id)}).focus(), document.getElementById(${JSON.stringify(id)}).select()`);
      await press('Backspace');
      await type(text);
    }
    const choose = (id, option) => value(`(() => { const select = document.getElementById(${JSON.stringify(id)}); select.focus(); select.value = ${JSON.stringify(option)};
      if (select.value !== ${JSON.stringify(option)}) throw new Error('no such option: ' + ${JSON.stringify(option)}); select.dispatchEvent(new Event('change', { bubbles: true })); })()`);
    const click = id => value(`document.getElementById(${JSON.stringify(id)}).click()`);
    const text = id => value(`document.getElementById(${JSON.stringify(id)}).innerText`);
    async function go(to) {
      await call('Page.navigate', { url: 'about:blank' });
      await call('Page.navigate', { url: to });
      await until('document.readyState === "complete"');
    }
    async function size(width, height, dark = false) {
      await call('Emulation.setDeviceMetricsOverride', { width, height, deviceScaleFactor: 1, mobile: width < 600 });
      await call('Emulation.setEmulatedMedia', { features: [{ name: 'prefers-color-scheme', value: dark ? 'dark' : 'light' }] });
    }
    const bytes = data => Buffer.from(data, 'base64');
    const picture = async (params = {}) => bytes((await call('Page.captureScreenshot', { format: 'png', ...params })).data);
    const pdf = async () => bytes((await call('Page.printToPDF', { preferCSSPageSize: true, paperWidth: 8.27, paperHeight: 11.69 })).data);
    if (address) await go(address);
    return { call, value, until, press, type, fill, choose, click, text, go, size, picture, pdf, complaints, events };
  }

  async function close() {
    await send('Browser.close').catch(() => {});
    await new Promise(resolve => browser.exitCode === null ? browser.once('exit', resolve) : resolve());
    rmSync(profile, { recursive: true, force: true, maxRetries: 5 });
  }
  return { page, close };
}
