create table jar (
    id      bigint        not null,
    version integer       not null,
    name    varchar(100)  not null,
    bought  date          not null,
    price   numeric(12, 2) not null,
    constraint jar_pk primary key (id)
);
insert into jar (id, version, name, bought, price) values
    (1, 0, 'Fern green, 240 ml', date '2025-03-02', 8.95),
    (2, 0, 'Clay white, 480 ml', date '2025-03-02', 14.50),
    (3, 0, 'Soft wax, 200 g', date '2025-04-11', 11.20),
    (4, 0, 'Matte seal, 240 ml', date '2025-04-11', 12.80),
    (5, 0, 'Gold leaf, 25 sheets', date '2025-05-20', 9.40),
    (6, 0, 'Crackle medium, 120 ml', date '2025-06-07', 7.75);

create table spring_session (
    primary_id             char(36) not null,
    session_id             char(36) not null,
    creation_time          bigint   not null,
    last_access_time       bigint   not null,
    max_inactive_interval  integer  not null,
    expiry_time            bigint   not null,
    principal_name         varchar(100),
    constraint spring_session_pk primary key (primary_id),
    constraint spring_session_id_once unique (session_id)
);
create index spring_session_expiry on spring_session (expiry_time);

create table spring_session_attributes (
    session_primary_id  char(36)     not null,
    attribute_name      varchar(200) not null,
    attribute_bytes     bytea        not null,
    constraint spring_session_attributes_pk primary key (session_primary_id, attribute_name),
    constraint spring_session_attributes_of_session foreign key (session_primary_id)
        references spring_session (primary_id) on delete cascade
);
