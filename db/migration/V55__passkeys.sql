-- Passkeys: the public half of keys that stay on a person's own device. Nothing here lets anybody in.
create table passkey (
    credential_id varchar(1400) not null,
    person_id uuid not null,
    label varchar(60) not null,
    place varchar(253) not null,
    public_key bytea not null,
    attestation_object bytea not null,
    signature_count bigint not null,
    uv_initialized boolean not null,
    backup_eligible boolean not null,
    backup_state boolean not null,
    transports varchar(100) not null,
    created_at timestamp with time zone not null,
    last_used_at timestamp with time zone,
    constraint passkey_pk primary key (credential_id),
    constraint passkey_of_person foreign key (person_id) references person (id) on delete cascade
);
