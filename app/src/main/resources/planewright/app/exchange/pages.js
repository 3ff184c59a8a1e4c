"use strict";
// Finds entries by the beginnings of words, in words.js, which is read when the field is first used. What is shown is set as text, never as HTML.
(() => {
  const MOST = 50;
  const AROUND = 60;
  const root = document.body.dataset.root;
  const said = document.body.dataset;
  const field = document.getElementById("find");
  const found = document.getElementById("found");
  const page = document.getElementById("page");
  let entries = null;
  let asked = false;

  const fold = text => text.normalize("NFKD").replace(/\p{M}/gu, "").toLowerCase();
  const spaced = text => " " + fold(text).replace(/[^\p{L}\p{N}.,/-]+/gu, " ").trim();

  function load() {
    if (asked) {
      return;
    }
    asked = true;
    const script = document.createElement("script");
    script.src = root + "words.js";
    script.onload = () => {
      entries = window.planewrightWords.map(([place, date, build, title, text]) => (
        { place, date, build, title, text, head: spaced(title + " " + build), all: spaced([title, build, date, text].join(" ")) }));
      show();
    };
    script.onerror = () => say(said.missing);
    document.head.append(script);
  }

  function say(words) {
    found.hidden = false;
    found.replaceChildren(element("p", "quiet", words));
  }

  function element(name, style, text) {
    const made = document.createElement(name);
    if (style) {
      made.className = style;
    }
    made.textContent = text;
    return made;
  }

  function show() {
    const terms = spaced(field.value).split(" ").filter(term => term !== "");
    page.hidden = terms.length > 0;
    found.hidden = terms.length === 0;
    if (terms.length === 0 || entries === null) {
      return;
    }
    const inHead = entry => terms.every(term => entry.head.includes(" " + term)) ? 0 : 1;
    const hits = entries
      .filter(entry => terms.every(term => entry.all.includes(" " + term)))
      .sort((one, other) => inHead(one) - inHead(other) || (one.date < other.date ? 1 : -1));
    const words = hits.length === 0 ? said.nothing : hits.length === 1 ? said.one : hits.length > MOST ? said.first : said.more;
    say(words.replace("{0}", hits.length).replace("{1}", MOST));
    const list = document.createElement("ol");
    hits.slice(0, MOST).forEach(hit => list.append(row(hit, terms)));
    found.append(list);
  }

  function row(hit, terms) {
    const row = document.createElement("li");
    const link = document.createElement("a");
    link.href = root + hit.place;
    mark(link, hit.title || hit.build, terms);
    row.append(link, element("div", "quiet", hit.build + " · " + hit.date));
    const excerpt = document.createElement("div");
    mark(excerpt, cut(hit.text, terms), terms);
    row.append(excerpt);
    return row;
  }

  // Where terms begin in a text: pairs of from and to, in its own letters.
  function places(text, terms) {
    const places = [];
    const letters = Array.from(text);
    const folded = letters.map(fold);
    const inWord = folded.map(letter => /[\p{L}\p{N}]/u.test(letter));
    for (let i = 0; i < letters.length; i++) {
      if (i > 0 && inWord[i - 1]) {
        continue;
      }
      const rest = folded.slice(i, i + 64).join("");
      const term = terms.filter(each => rest.startsWith(each)).sort((a, b) => b.length - a.length)[0];
      if (term) {
        let to = i;
        for (let length = 0; length < term.length; to++) {
          length += folded[to].length;
        }
        places.push([i, to]);
        i = to - 1;
      }
    }
    return { letters, places };
  }

  function cut(text, terms) {
    const { letters, places: at } = places(text, terms);
    const first = at.length > 0 ? at[0][0] : 0;
    const from = Math.max(0, first - AROUND);
    const to = Math.min(letters.length, first + 3 * AROUND);
    return (from > 0 ? "…" : "") + letters.slice(from, to).join("") + (to < letters.length ? "…" : "");
  }

  // Puts a text into an element, the beginnings of words that were asked for marked.
  function mark(into, text, terms) {
    const { letters, places: at } = places(text, terms);
    let end = 0;
    for (const [from, to] of at) {
      into.append(letters.slice(end, from).join(""), element("mark", "", letters.slice(from, to).join("")));
      end = to;
    }
    into.append(letters.slice(end).join(""));
  }

  field.addEventListener("focus", load);
  field.addEventListener("input", () => {
    load();
    show();
  });
  window.addEventListener("hashchange", () => {
    field.value = "";
    show();
  });
  if (field.value !== "") {
    load();
  }
})();
