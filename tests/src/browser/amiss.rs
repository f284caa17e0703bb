//! Words on the screen that nobody could read: lying over others, sticking out of their drawing, cut off by their box,
//! running out of the page.

use serde_json::{Value, json};

use super::Browser;

/// Texts that lie over others, stick out of their drawing, or are cut by the box they stand in.
const AMISS: &str = "
const found = [];
const seen = (one) => one.checkVisibility({ visibilityProperty: true, opacityProperty: true }) && !one.closest('.unseen, .skip, .report, select, dialog:not([open])');
const all = [];
// What a list cuts off at its edge is not seen.
const inView = (one, box) => {
    let { left, top, right, bottom } = box;
    for (let up = one.parentElement; up && up !== document.body; up = up.parentElement) {
        if (getComputedStyle(up).overflowY === 'visible' || up.closest('svg')) continue;
        const edge = up.getBoundingClientRect();
        [left, top] = [Math.max(left, edge.left), Math.max(top, edge.top)];
        [right, bottom] = [Math.min(right, edge.right), Math.min(bottom, edge.bottom)];
    }
    return { left, top, right, bottom };
};
// What a box that does not scroll cuts off is lost. Letters end a little within their line.
const cut = (one, box) => {
    for (let up = one; up && up !== document.body; up = up.parentElement) {
        const style = getComputedStyle(up);
        const kinds = [style.overflowX, style.overflowY];
        if (kinds.some((kind) => kind === 'auto' || kind === 'scroll')) return null;
        // What ends in dots says so itself; all of it stands elsewhere.
        if (style.textOverflow === 'ellipsis') return null;
        if (style.display === 'inline' || !kinds.some((kind) => kind === 'hidden' || kind === 'clip')) continue;
        const edge = up.getBoundingClientRect();
        // For the ear alone.
        if (edge.width < 4 || edge.height < 4) return null;
        if (box.top < edge.top - 3 || box.bottom > edge.bottom + 3 || box.left < edge.left - 2 || box.right > edge.right + 2)
            return `${up.tagName.toLowerCase()}.${up.className}`;
    }
    return null;
};
const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
for (let node = walk.nextNode(); node; node = walk.nextNode()) {
    const text = node.textContent.trim();
    const one = node.parentElement;
    if (!text || !seen(one)) continue;
    const range = document.createRange();
    range.selectNodeContents(node);
    for (const box of range.getClientRects()) {
        if (box.width < 1 || box.height < 1) continue;
        // What is scrolled out of a list, or lies under the fixed edges of the page, is not in view.
        const [x, y] = [box.left + box.width / 2, box.top + box.height / 2];
        const top = document.elementFromPoint(x, y);
        if (!top || !(top.contains(one) || one.contains(top) || one.closest('svg')?.contains(top))) continue;
        all.push({ text, one, box: inView(one, box) });
    }
    const svg = one.closest('svg');
    if (svg) {
        const frame = svg.getBoundingClientRect();
        const box = range.getBoundingClientRect();
        const out = box.left < frame.left - 1 || box.right > frame.right + 1 || box.top < frame.top - 2 || box.bottom > frame.bottom + 2;
        if (frame.width && out) found.push(`'${text}' sticks out`);
        continue;
    }
    const over = cut(one, range.getBoundingClientRect());
    if (over) found.push(`'${text}' is cut by ${over}`);
}
// On the whole drawing no line runs through a word: a few points of each word's small letters, against every stroke.
for (const sheet of document.querySelectorAll('svg.sheet')) {
    if (!sheet.checkVisibility({ visibilityProperty: true }) || !sheet.clientWidth) continue;
    const lines = [...sheet.querySelectorAll('path, line, rect, circle, ellipse')].filter((one) => {
        if (one.matches('.hit, .tank') || one.closest('defs')) return false;
        const { stroke, strokeWidth } = getComputedStyle(one);
        return stroke !== 'none' && parseFloat(strokeWidth) > 0;
    }).map((one) => ({ one, back: one.getScreenCTM().inverse(), box: one.getBoundingClientRect() }));
    for (const text of sheet.querySelectorAll('text')) {
        const box = text.getBoundingClientRect();
        if (!box.width || !seen(text)) continue;
        const rows = [0.4, 0.6, 0.75].map((part) => box.top + box.height * part);
        const crossed = lines.find(({ one, back, box: area }) => {
            const reach = parseFloat(getComputedStyle(one).strokeWidth);
            if (area.right + reach < box.left || area.left - reach > box.right) return false;
            if (area.bottom + reach < box.top || area.top - reach > box.bottom) return false;
            for (const y of rows)
                for (let x = box.left + 1; x < box.right - 1; x += 1.5)
                    if (one.isPointInStroke(new DOMPoint(x, y).matrixTransform(back))) return true;
            return false;
        });
        if (crossed) found.push(`'${text.textContent}' is crossed by ${crossed.one.getAttribute('class')}`);
    }
}
const dialog = document.querySelector('dialog[open]');
all.sort((a, b) => a.box.top - b.box.top);
all.forEach((a, at) => {
    for (let next = at + 1; next < all.length; next += 1) {
        const b = all[next];
        if (b.box.top > a.box.bottom) break;
        if (a.one === b.one) continue;
        if (dialog && dialog.contains(a.one) !== dialog.contains(b.one)) continue;
        const across = Math.min(a.box.right, b.box.right) - Math.max(a.box.left, b.box.left);
        const down = Math.min(a.box.bottom, b.box.bottom) - Math.max(a.box.top, b.box.top);
        if (across > 1 && down > 4) found.push(`'${a.text}' over '${b.text}'`);
    }
});
for (const one of document.querySelectorAll('button, a.button, h1, h2, h3, td, th, legend, .lcd, .tag, .job, .licence, .name, label > span, summary')) {
    if (!one.offsetParent || one.closest('.unseen') || one.clientWidth < 4) continue;
    if (one.scrollWidth > one.clientWidth + 1) found.push(`'${one.textContent}' is cut off`);
    const box = one.getBoundingClientRect();
    if (box.right > innerWidth + 1 && !one.closest('.debrief-tabs, table')) found.push(`'${one.textContent}' runs out of the page`);
}
return [...new Set(found)];";

/// What is pressed and smaller than asked. What has a label is as large as both together; a part of a drawing is as large
/// as the invisible shape that answers for it.
const SMALL: &str = "
const [least] = arguments;
const found = [];
const middles = [];
for (const one of document.querySelectorAll('a[href], button, select, input, textarea, summary, [role=button], [role=slider]')) {
    if (!one.checkVisibility({ visibilityProperty: true, opacityProperty: true }) || one.closest('dialog:not([open]), .skip, .report, .markers, .term')) continue;
    const drawn = one.closest('svg');
    const running = !drawn && getComputedStyle(one).display === 'inline' && one.parentElement.textContent.trim() !== one.textContent.trim();
    if (running) continue;
    const parts = drawn ? [one.querySelector('.hit') ?? one] : [one, one.closest('label')];
    const boxes = parts.filter(Boolean).map((each) => each.getBoundingClientRect());
    const [width, height] = ['width', 'height'].map((side) => Math.max(...boxes.map((box) => box[side])));
    if (width < 1 || height < 1) continue;
    if (width < least - 0.5 || height < least - 0.5)
        found.push(`${one.getAttribute('aria-label') ?? one.textContent.trim().slice(0, 40)} (${one.tagName.toLowerCase()}): ${width.toFixed(0)} by ${height.toFixed(0)}`);
    if (!one.matches('.point')) continue;
    const middle = [boxes[0].x + width / 2, boxes[0].y + height / 2];
    for (const [name, x, y] of middles) {
        const apart = Math.hypot(x - middle[0], y - middle[1]);
        if (apart < 24) found.push(`${name} and ${one.dataset.point}: ${apart.toFixed(1)} apart`);
    }
    middles.push([one.dataset.point, ...middle]);
}
return [...new Set(found)];";

impl Browser {
    /// What is amiss with the words in view; an empty list is well.
    pub fn amiss(&self) -> Value {
        self.run(AMISS, &[])
    }

    /// What is too small for a finger, by name: less than so many CSS pixels in width or height, but for links and
    /// terms in running text, and for the marks on the plots, each of which stands in the list of acts too.
    ///
    /// Points of a detail answer in circles as large as asked, and a screw lies nearer to its wire's end than that: their
    /// circles overlap, and a press goes to the nearer point. So a point has the whole circle where it has no neighbour,
    /// and towards a neighbour half the way to it. That way is held to 24 pixels at least, the spacing of WCAG 2.2,
    /// 2.5.8, so that no point's own area is narrower than 24; the list beside the drawing has every point at full size.
    pub fn too_small(&self, least: f64) -> Value {
        self.run(SMALL, &[json!(least)])
    }

    /// Sees that no word in view is cut or lies over another, and that nothing sticks out sideways.
    #[track_caller]
    pub fn assert_legible(&self, what: &str) {
        assert_eq!(self.amiss(), json!([]), "{what}");
        let sideways = self.run("return document.scrollingElement.scrollWidth - innerWidth;", &[]);
        assert_eq!(sideways, json!(0), "{what} sticks out sideways");
    }
}
