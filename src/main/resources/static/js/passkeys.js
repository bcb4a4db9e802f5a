// Passkeys: asks the browser to make one, or to sign with one. Without this script a password does the same.
"use strict";

const passkeys = {
  usable: () => window.isSecureContext && "PublicKeyCredential" in window && document.querySelector("input[name=_csrf]"),

  bytes: text => Uint8Array.from(atob(text.replace(/-/g, "+").replace(/_/g, "/")), sign => sign.charCodeAt(0)),

  text: bytes => btoa(String.fromCharCode(...new Uint8Array(bytes)))
    .replace(/\+/g, "-").replace(/\//g, "_").replace(/=+$/, ""),

  async send(path, body) {
    const answer = await fetch(path, {
      method: "POST",
      headers: { "Accept": "application/json", "Content-Type": "application/json",
        "X-CSRF-TOKEN": document.querySelector("input[name=_csrf]").value },
      body: JSON.stringify(body)
    });
    if (!answer.ok) {
      throw new Error("refused " + answer.status);
    }
    return answer.json();
  },

  async make(label) {
    const options = await this.send("/me/passkeys/options", {});
    options.challenge = this.bytes(options.challenge);
    options.user.id = this.bytes(options.user.id);
    options.excludeCredentials = (options.excludeCredentials || []).map(one => ({ ...one, id: this.bytes(one.id) }));
    const made = await navigator.credentials.create({ publicKey: options });
    const response = made.response;
    await this.send("/me/passkeys", { label, credential: {
      id: made.id, rawId: this.text(made.rawId), type: made.type,
      authenticatorAttachment: made.authenticatorAttachment,
      clientExtensionResults: made.getClientExtensionResults(),
      response: {
        attestationObject: this.text(response.attestationObject),
        clientDataJSON: this.text(response.clientDataJSON),
        transports: response.getTransports ? response.getTransports() : []
      }
    } });
  },

  async sign(path) {
    const options = await this.send("/passkey/options", {});
    options.challenge = this.bytes(options.challenge);
    options.allowCredentials = (options.allowCredentials || []).map(one => ({ ...one, id: this.bytes(one.id) }));
    const signed = await navigator.credentials.get({ publicKey: options });
    const response = signed.response;
    return this.send(path, {
      id: signed.id, rawId: this.text(signed.rawId), type: signed.type,
      authenticatorAttachment: signed.authenticatorAttachment,
      clientExtensionResults: signed.getClientExtensionResults(),
      response: {
        authenticatorData: this.text(response.authenticatorData),
        clientDataJSON: this.text(response.clientDataJSON),
        signature: this.text(response.signature),
        userHandle: response.userHandle ? this.text(response.userHandle) : undefined
      }
    });
  }
};

const acts = {
  async make(part) {
    const label = part.querySelector("input");
    if (!label.value.trim()) {
      label.focus();
      return;
    }
    await passkeys.make(label.value.trim());
    location.assign("/me");
  },

  async enter() {
    const own = document.querySelector("input[name=ownDevice]");
    const answer = await passkeys.sign("/passkey" + (own && own.checked ? "?ownDevice=true" : ""));
    location.assign(answer.to);
  },

  async prove(part) {
    await passkeys.sign("/prove/passkey");
    const form = document.querySelector("form[action='/prove']");
    if (part.dataset.sending === "POST") {
      form.action = part.dataset.to;
      form.submit();
    } else {
      location.assign(part.dataset.to);
    }
  }
};

document.querySelectorAll("[data-passkey]").forEach(part => {
  if (!passkeys.usable()) {
    part.removeAttribute("data-soon");
    return;
  }
  part.hidden = false;
  const said = part.querySelector("[role=status]");
  part.querySelector("button").addEventListener("click", async () => {
    said.textContent = "";
    try {
      await acts[part.dataset.passkey](part);
    } catch (refused) {
      said.textContent = part.dataset.refused;
    }
  });
});
