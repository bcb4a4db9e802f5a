package patinary.shop;

import java.util.Set;
import org.springframework.security.authentication.AnonymousAuthenticationToken;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.authority.AuthorityUtils;
import org.springframework.security.web.webauthn.api.AuthenticatorAssertionResponse;
import org.springframework.security.web.webauthn.api.AuthenticatorAttestationResponse;
import org.springframework.security.web.webauthn.api.AuthenticatorSelectionCriteria;
import org.springframework.security.web.webauthn.api.CredentialRecord;
import org.springframework.security.web.webauthn.api.PublicKeyCredential;
import org.springframework.security.web.webauthn.api.PublicKeyCredentialCreationOptions;
import org.springframework.security.web.webauthn.api.PublicKeyCredentialRequestOptions;
import org.springframework.security.web.webauthn.api.PublicKeyCredentialRpEntity;
import org.springframework.security.web.webauthn.api.ResidentKeyRequirement;
import org.springframework.security.web.webauthn.api.UserVerificationRequirement;
import org.springframework.security.web.webauthn.management.ImmutablePublicKeyCredentialCreationOptionsRequest;
import org.springframework.security.web.webauthn.management.ImmutablePublicKeyCredentialRequestOptionsRequest;
import org.springframework.security.web.webauthn.management.ImmutableRelyingPartyRegistrationRequest;
import org.springframework.security.web.webauthn.management.RelyingPartyAuthenticationRequest;
import org.springframework.security.web.webauthn.management.RelyingPartyPublicKey;
import org.springframework.security.web.webauthn.management.WebAuthnRelyingPartyOperations;
import org.springframework.security.web.webauthn.management.Webauthn4JRelyingPartyOperations;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * Makes passkeys and takes sign-ins by them, at one place at a time (W3C Web Authentication). A device must unlock for each use, so
 * that a passkey is two factors in one (OWASP ASVS 5.0, 6.3.3), and it keeps the name of its person, so that none is typed.
 */
@Service
@Transactional
class PasskeyDesk {

    private static final Authentication NOBODY = new AnonymousAuthenticationToken(
            "passkeys", "nobody", AuthorityUtils.createAuthorityList("ROLE_ANONYMOUS"));

    private final PasskeyPeople people;
    private final Passkeys keys;
    private final CurrentShop shop;

    PasskeyDesk(PasskeyPeople people, Passkeys keys, CurrentShop shop) {
        this.people = people;
        this.keys = keys;
        this.shop = shop;
    }

    public PublicKeyCredentialCreationOptions offer(PasskeyPlaces.Place place, Authentication who) {
        return at(place)
                .createPublicKeyCredentialCreationOptions(new ImmutablePublicKeyCredentialCreationOptionsRequest(who));
    }

    /** @throws RuntimeException where what the device sent does not fit what it was asked for */
    public void keep(
            PasskeyPlaces.Place place,
            PublicKeyCredentialCreationOptions asked,
            PublicKeyCredential<AuthenticatorAttestationResponse> answer,
            String label) {
        CredentialRecord kept = at(place)
                .registerCredential(
                        new ImmutableRelyingPartyRegistrationRequest(asked, new RelyingPartyPublicKey(answer, label)));
        keys.bind(kept.getCredentialId(), place.name());
    }

    public PublicKeyCredentialRequestOptions ask(PasskeyPlaces.Place place) {
        return at(place).createCredentialRequestOptions(new ImmutablePublicKeyCredentialRequestOptionsRequest(NOBODY));
    }

    /**
     * Who signed.
     *
     * @throws RuntimeException where the passkey is unknown, or did not sign what it was asked for at this place
     */
    public String who(
            PasskeyPlaces.Place place,
            PublicKeyCredentialRequestOptions asked,
            PublicKeyCredential<AuthenticatorAssertionResponse> answer) {
        return at(place)
                .authenticate(new RelyingPartyAuthenticationRequest(asked, answer))
                .getName();
    }

    private WebAuthnRelyingPartyOperations at(PasskeyPlaces.Place place) {
        PublicKeyCredentialRpEntity here = PublicKeyCredentialRpEntity.builder()
                .id(place.name())
                .name(shop.name())
                .build();
        Webauthn4JRelyingPartyOperations at =
                new Webauthn4JRelyingPartyOperations(people, keys, here, Set.of(place.origin()));
        at.setCustomizeCreationOptions(
                options -> options.authenticatorSelection(AuthenticatorSelectionCriteria.builder()
                        .residentKey(ResidentKeyRequirement.REQUIRED)
                        .userVerification(UserVerificationRequirement.REQUIRED)
                        .build()));
        at.setCustomizeRequestOptions(options -> options.userVerification(UserVerificationRequirement.REQUIRED));
        return at;
    }
}
