/** A place to paste rows from a sheet. */
import { useState } from "preact/hooks";

export interface Pasted {
	/** What became of the rows, to be told. */
	told: string;
	/** False leaves the text there to be corrected. */
	taken: boolean;
}

export function PasteBox({ take }: { take: (text: string) => Pasted }) {
	const [text, setText] = useState("");
	const [told, setTold] = useState("");
	const use = () => {
		const pasted = take(text);
		setTold(pasted.told);
		if (pasted.taken) setText("");
	};
	return (
		<details>
			<summary>Paste rows from a sheet</summary>
			<div class="field">
				<label for="pasted-rows">Rows</label>
				<textarea
					id="pasted-rows"
					rows={4}
					value={text}
					spellcheck={false}
					aria-describedby="pasted-order"
					onInput={(event) => setText(event.currentTarget.value)}
				/>
				<div class="hint" id="pasted-order">
					<p>Name, quantity, length, width, thickness;</p>
					<p>or any columns under a header row.</p>
				</div>
			</div>
			<button type="button" onClick={use} disabled={text.trim() === ""}>
				Use these rows
			</button>
			<p class="told" role="status">
				{told}
			</p>
		</details>
	);
}
